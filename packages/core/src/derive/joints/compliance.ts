import { boltCompliance, clampedCompliance } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Young's modulus of steel [Pa]. Source: from memory. */
const STEEL = 206e9;

/** Declares how much a fastener gives under load. */
export function fastenerCompliance({ prefix, word, part, index, system, stressArea }: Joint) {
  const [A, path] = stressArea;
  return quantity({
    id: `${prefix}Compliance`,
    name: `Compliance of a ${word}`,
    symbol: `delta_${index}`,
    unit: "mm/kN",
    decimals: 5,
    system,
    meaning: `How much a ${word} lengthens for each unit of load, with half a diameter of engaged thread and half a diameter of its head.`,
    inputs: {
      l_k: `${part}.grip`,
      l_ft: `${part}.freeThread`,
      A_sh: `${part}.shankArea`,
      [A]: path,
      d: `${part}.threadDiameter`,
    } as Paths,
    method:
      "Shank with half a diameter for the head, and free thread with half a diameter of engaged thread on the stress area, each its length over section and modulus of steel (206 GPa), added up.",
    compute: (n: Numbers) => {
      if (n.l_ft! > n.l_k!) throw new RangeError("more free thread than grip");
      return boltCompliance([
        { length: n.l_k! - n.l_ft! + n.d! / 2, area: n.A_sh!, elasticModulus: STEEL },
        { length: n.l_ft! + n.d! / 2, area: n[A]!, elasticModulus: STEEL },
      ]);
    },
    shape: "monotone",
    valid: "steel fasteners (206 GPa) below yield",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { l_k: "120 mm", l_ft: "10 mm", A_sh: "78.5 mm2", [A]: "75.85 mm2", d: "11 mm" },
        expect: "0.00813 mm/kN",
      },
    ],
    display: true,
  });
}

/** Declares how much the parts that a fastener clamps give under load. */
export function clampedGive({ prefix, word, part, index, system }: Joint) {
  return quantity({
    id: `${prefix}ClampedCompliance`,
    name: `Compliance of what a ${word} clamps`,
    symbol: `delta_k${index}`,
    unit: "mm/kN",
    decimals: 5,
    system,
    meaning: `How much the parts under a ${word} are pressed together for each unit of load.`,
    inputs: { l_k: `${part}.grip`, d: `${part}.threadDiameter`, E_k: `${part}.clampedModulus` },
    method:
      "Two frusta of 30° that start under head and nut, one and a half diameters wide, and meet at half the grip: 1/δ = 0.5774 π E d / (2 ln[5 (0.5774 l + 0.5 d)/(0.5774 l + 2.5 d)]).",
    compute: ({ l_k, d, E_k }) => clampedCompliance({ grip: l_k, diameter: d, elasticModulus: E_k }),
    shape: "guarded",
    valid: "parts of one metal, wide enough for the pressed zone; narrow bosses give tens of per cent more",
    sources: [{ id: "shigley", where: "joints, member stiffness" }],
    examples: [{ given: { l_k: "120 mm", d: "11 mm", E_k: "73 GPa" }, expect: "0.00186 mm/kN" }],
    display: true,
  });
}
