import { yieldUse } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { HeatedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares the use of a fastener’s yield strength with the joint hot. */
export function hotUse(joint: HeatedJoint, expect: string) {
  const { prefix, word, part, index, system, preload, stressArea } = joint;
  const [[F], [A], gain] = [preload, stressArea, `Delta_F${index}`];
  return quantity({
    id: `${prefix}HotUse`,
    name: `Use of the ${word}’s yield strength, hot`,
    symbol: `nu_w${index}`,
    unit: "1",
    decimals: 3,
    system,
    meaning: `Preload of a ${word} with what heat adds, over the load at which its weakest section yields. A fastener that yields hot is loose when it has cooled.`,
    inputs: {
      [F]: preload[1],
      [gain]: joint.heat.id,
      [A]: stressArea[1],
      A_sh: `${part}.shankArea`,
      R_p: `${part}.yieldStrength`,
    } as Paths,
    formula: `max(0, ${F} + ${gain}) / (min(${A}, A_sh) * R_p)`,
    compute: (n: Numbers) =>
      yieldUse({
        preload: Math.max(0, n[F]! + n[gain]!),
        area: Math.min(n[A]!, n.A_sh!),
        yieldStrength: n.R_p!,
      }),
    shape: "guarded",
    valid: "tension alone; nothing lost by settling; yield strength as cold",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: {
          [F]: "66 kN",
          [gain]: "10 kN",
          [A]: "75.85 mm2",
          A_sh: "78.5 mm2",
          R_p: "1250 MPa",
        },
        expect,
      },
    ],
    display: true,
  });
}

/** Declares the clamp left at a fastener with the joint hot. */
export function clampLeftHot(joint: HeatedJoint) {
  const { prefix, word, index, system } = joint;
  const [left, gain] = [`F_K${index}`, `Delta_F${index}`];
  return quantity({
    id: `${prefix}ClampLeftHot`,
    name: `Clamp left at a ${word}, hot`,
    symbol: `F_Kw${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `Force that still presses the joint together at one ${word} under its working load, its faces settled and the joint warm. A steel bolt in titanium loses clamp by heat, in aluminium it gains.`,
    inputs: { [left]: `${prefix}ClampLeft`, [gain]: joint.heat.id } as Paths,
    formula: `${left} + ${gain}`,
    compute: (n: Numbers) => n[left]! + n[gain]!,
    shape: "guarded",
    valid: `as the clamp left cold: ${joint.prying} (common practice)`,
    sources: [{ id: "vdi-2230" }],
    examples: [{ given: { [left]: "29.4 kN", [gain]: "-3.1 kN" }, expect: "26.3 kN" }],
    display: true,
  });
}
