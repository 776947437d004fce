import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Least room between a valve and its piston, hot and at speed. */
export function pistonToValveHot(side: Side) {
  const { word, index, part } = sides[side];
  const [cold, tilt] = [`c_v${index}`, `tau_${index}`];
  return quantity({
    id: `${side}PistonToValveHot`,
    name: `${word} valve to piston, hot at speed`,
    symbol: `c_v${index}h`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `What is left of the least room between the ${side} valve and the floor of its pocket at full load and overspeed: the piston comes nearer to the head by what the squish gap loses to heat, to stretch and to play. Negative: they strike.`,
    inputs: {
      [cold]: `${side}PistonToValve`,
      q: "squishGap",
      q_run: "runningSquishGap",
      [tilt]: `${part}.tilt`,
    } as Readonly<Record<string, string>>,
    formula: `${cold} - (q - q_run) * cos(${tilt})`,
    compute: (n) => n[cold]! - (n.q! - n.q_run!) * Math.cos(n[tilt]!),
    shape: "guarded",
    valid:
      "the loss at top dead centre, which is the greatest, taken for all angles; lash as entered is the lash hot; a valve that floats or bounces takes more",
    sources: [{ id: "plane-geometry" }, { id: "common-practice", where: "what the squish gap loses" }],
    examples: [
      {
        given: { [cold]: "2.19 mm", q: "1.101 mm", q_run: "0.827 mm", [tilt]: "12 deg" },
        expect: "1.92 mm",
      },
    ],
    display: true,
  });
}
