import { nutFactor } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the one number that holds all friction of a torque. */
export function torqueCoefficient({ prefix, word, part, index, system, preload }: Joint) {
  const [F, path] = preload;
  return quantity({
    id: `${prefix}NutFactor`,
    name: `Nut factor of a ${word}`,
    symbol: `K_${index}`,
    unit: "1",
    decimals: 3,
    system,
    meaning:
      "Torque over preload and diameter: one number for all friction. About 0.2 dry, 0.15 oiled, 0.11 with assembly lubricants; far from these, torque or friction was misread.",
    inputs: { T_f: `${part}.torque`, [F]: path, d: `${part}.threadDiameter` } as Paths,
    formula: `T_f / (${F} * d)`,
    compute: (n: Numbers) => nutFactor({ torque: n.T_f!, preload: n[F]!, majorDiameter: n.d! }),
    shape: "guarded",
    valid: "tightened by torque",
    sources: [{ id: "common-practice" }, { id: "shigley", where: "torque factors" }],
    examples: [{ given: { T_f: "115 N m", [F]: "67.708 kN", d: "11 mm" }, expect: "0.154" }],
    display: true,
  });
}
