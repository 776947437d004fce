import { quantity } from "../Quantity.ts";
import { type Bearing, headed, type Numbers, type Paths } from "./Bearing.ts";

/** Declares how much of the clearance’s window the uncertainty of its measurement takes. */
export function clearanceDoubt(bearing: Bearing) {
  const { prefix, word, part, index } = bearing;
  return quantity({
    id: `${prefix}ClearanceDoubt`,
    name: `${headed(bearing)} clearance, uncertainty over window`,
    symbol: `u_${index}`,
    unit: "1",
    decimals: 2,
    system: "bearings",
    meaning: `Uncertainty of the measured clearance of the ${word} over the width of the window that is allowed. At one half the measurement can hardly tell a good bearing from a bad one.`,
    inputs: { U_C: `${part}.clearanceUncertainty`, W_C: `${part}.clearanceWindow` } as Paths,
    formula: "U_C / W_C",
    compute: (n: Numbers) => n.U_C! / n.W_C!,
    shape: "monotone",
    valid: "expanded uncertainty (k = 2)",
    sources: [{ id: "definition" }],
    examples: [{ given: { U_C: "0.006 mm", W_C: "0.025 mm" }, expect: "0.24" }],
    display: true,
  });
}
