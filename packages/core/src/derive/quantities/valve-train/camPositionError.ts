import { quantity } from "../../Quantity.ts";

export const camPositionError = quantity({
  id: "camPositionError",
  name: "Camshaft position against its card",
  symbol: "Delta_theta_c",
  unit: "deg",
  decimals: 2,
  system: "valve-train",
  meaning:
    "Inlet centre line as timed less that of the card, in degrees of the crankshaft. Positive: the camshaft is late; negative: early.",
  inputs: { theta_ci: "camshaft.inletCentre", theta_cc: "camshaft.inletCentreCard" },
  formula: "theta_ci - theta_cc",
  compute: ({ theta_ci, theta_cc }) => theta_ci - theta_cc,
  shape: "monotone",
  valid: "the inlet camshaft, or one camshaft for both",
  sources: [{ id: "definition" }],
  examples: [{ given: { theta_ci: "106 deg", theta_cc: "105 deg" }, expect: "1.00 deg" }],
});
