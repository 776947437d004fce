import { valveToBore } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import { alongInputs, alongOf, alongRoutes } from "./valveAlong.ts";
import { type Side, sides } from "./valveSide.ts";

/** Room between an open valve and the cylinder wall. */
export function valveWallRoom(side: Side) {
  const { word, index, part } = sides[side];
  const example = {
    B: "104 mm",
    [`x_${index}`]: "22 mm",
    [`d_${index}`]: "54.6 mm",
    [`tau_${index}`]: "0 deg",
    [`L_${index}`]: "14 mm",
    [`n_v${index}`]: "2",
  };
  return quantity({
    id: `${side}ValveToBore`,
    name: `${word} valve to cylinder wall`,
    symbol: `c_b${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Least room between the edge of the ${side} valve and the cylinder wall, shut or open. A valve close to the wall also breathes badly.`,
    inputs: {
      B: "block.bore",
      [`x_${index}`]: `${part}.centreDistance`,
      ...alongInputs(side),
      [`d_${index}`]: `${part}.headDiameter`,
      [`tau_${index}`]: `${part}.tilt`,
      [`L_${index}`]: `${side}ValveLift`,
    } as Readonly<Record<string, string>>,
    routes: alongRoutes(side),
    method:
      "Half the bore less the farthest point of the valve’s edge from the cylinder axis, shut and at full lift; the lesser is taken.",
    compute: (n) => {
      const along = alongOf(side, n);
      const at = (lift: number) =>
        valveToBore({
          bore: n.B!,
          centreDistance: n[`x_${index}`]!,
          centreAlong: along,
          valveRadius: n[`d_${index}`]! / 2,
          valveTilt: n[`tau_${index}`]!,
          lift,
        });
      return Math.min(at(0), at(n[`L_${index}`]!));
    },
    shape: "guarded",
    hot: { quantity: `${side}ValveToBoreHot` },
    valid:
      "a stem that leans square to the crankshaft; of three valves the middle one not looked at; counts where the valve reaches below the deck",
    sources: [{ id: "plane-geometry" }],
    examples: [
      { given: { ...example, [`x_${index}`]: "12 mm", [`y_${index}`]: "16 mm" }, expect: "4.70 mm" },
      { given: { ...example, [`n_v${index}`]: "1" }, expect: "2.70 mm" },
    ],
  });
}
