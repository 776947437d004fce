import { quantity } from "../Quantity.ts";
import { type Bearing, headed, type Numbers, type Paths } from "./Bearing.ts";

/** Declares how far the measured clearance of a bearing lies from the one that its sizes give. */
export function clearanceMismatch(bearing: Bearing) {
  const { prefix, word, part, index, clearance } = bearing;
  const C = clearance[0];
  return quantity({
    id: `${prefix}ClearanceMismatch`,
    name: `${headed(bearing)} clearance, measured less computed`,
    symbol: `d_C${index}`,
    unit: "mm",
    decimals: 3,
    system: "bearings",
    meaning: `Clearance of the ${word} as measured, less the one that housing, shells and journal give. Far from zero, one of the four is misread, or the wrong shell or torque was used. Positive: more was found than the sizes give.`,
    inputs: { C_me: `${part}.measuredClearance`, [C]: clearance[1] } as Paths,
    formula: `C_me - ${C}`,
    compute: (n: Numbers) => n.C_me! - n[C]!,
    shape: "monotone",
    valid: "both square to the joint, with the same shells and the same torque",
    sources: [{ id: "definition" }],
    examples: [{ given: { C_me: "0.062 mm", [C]: "0.066 mm" }, expect: "-0.004 mm" }],
    display: true,
  });
}
