import { quantity } from "../../Quantity.ts";

export const pistonReadingError = quantity({
  id: "pistonReadingError",
  name: "Error of the piston’s size by temperature",
  symbol: "e_T",
  unit: "mm",
  decimals: 4,
  system: "assembly",
  meaning:
    "How far the piston’s diameter is misread because part and gauge differ in temperature: the growth of the piston over that gap. A warm piston reads large, and its clearance is then cut too wide.",
  inputs: { alpha_p: "piston.expansion", D: "piston.diameter", Delta_T_ms: "measuringTemperatureGap" },
  formula: "alpha_p * D * Delta_T_ms",
  compute: ({ alpha_p, D, Delta_T_ms }) => alpha_p * D * Delta_T_ms,
  shape: "guarded",
  valid: "a piston of one temperature, a gauge set at its own",
  sources: [{ id: "definition" }],
  examples: [{ given: { alpha_p: "22 um/(m K)", D: "86.5 mm", Delta_T_ms: "5 K" }, expect: "0.0095 mm" }],
});
