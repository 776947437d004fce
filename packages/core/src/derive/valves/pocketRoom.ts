import { pistonToValveAxial, pistonToValveRadial, pistonTravel, valvePocketRoom } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import {
  liftExamples,
  liftInputs,
  liftRoutes,
  liftTables,
  overPistonExamples,
  overPistonInputs,
  type Side,
  sides,
  valveOverPiston,
} from "./valveSide.ts";

/** Least room between the edge of a valve and the wall of its pocket. */
export function pocketRoom(side: Side, expect: string) {
  const { word, index, part } = sides[side];
  const [depth, radius, offset, diameter] = [`p_${index}`, `R_p_${index}`, `e_p${index}`, `d_${index}`];
  return quantity({
    id: `${side}PocketRoom`,
    name: `${word} valve to pocket wall`,
    symbol: `c_r${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Least radial room between the edge of the ${side} valve and the wall of its pocket while the valve dips below the crown; when it never does, the room at its lowest place and its height above the crown, added up.`,
    inputs: {
      ...overPistonInputs(side),
      ...liftInputs(side),
      [depth]: `${part}.pocketDepth`,
      [radius]: `${part}.pocketRadius`,
      [offset]: `${part}.pocketOffset`,
      [diameter]: `${part}.headDiameter`,
    },
    tables: liftTables(side),
    routes: liftRoutes(side),
    method:
      "Radius of the pocket less radius of the valve less the distance between their axes as the piston falls, over the crank angles at which the valve’s edge lies below the crown; the least is taken. Where the edge stays above the crown: the room at the angle at which it comes nearest to the crown, with its height above the crown added, so that the value does not jump where a tolerance lets it dip.",
    compute: (n, _words, tables) => {
      const over = valveOverPiston(side, n, tables);
      const pocket = {
        pocketRadius: n[radius]!,
        valveRadius: n[diameter]! / 2,
        pocketOffset: n[offset]!,
        valveTilt: over.valveTilt,
      };
      const least = pistonToValveRadial({ ...over, ...pocket, pocketDepth: n[depth]! });
      if (least !== undefined) return least.clearance;
      const { clearance, angle } = pistonToValveAxial(over);
      const room = valvePocketRoom({ ...pocket, travel: pistonTravel(over.crank, angle) });
      // Not the distance from the rim: near the crown that hardly tells how far the edge is from dipping.
      return room + clearance - n[depth]!;
    },
    shape: "guarded",
    hot: { quantity: `${side}PocketRoomHot` },
    valid: "round pockets; stem clearance and valve rock take 0.2 to 0.4 mm more (common practice)",
    sources: [{ id: "plane-geometry" }],
    examples: [
      {
        given: {
          ...overPistonExamples[side],
          ...liftExamples[side],
          [depth]: "3 mm",
          [radius]: "18.9 mm",
          [offset]: "0.2 mm",
          [diameter]: "35 mm",
        },
        expect,
      },
    ],
  });
}
