import { quantity } from "../../Quantity.ts";

export const lobeSeparation = quantity({
  id: "lobeSeparation",
  name: "Lobe separation",
  symbol: "theta_ls",
  unit: "deg",
  decimals: 1,
  system: "valve-train",
  meaning:
    "Angle between the middles of the inlet and exhaust lobes on the camshaft, in degrees of the camshaft.",
  inputs: { theta_ci: "camshaft.inletCentre", theta_ce: "camshaft.exhaustCentre" },
  formula: "(theta_ci + theta_ce) / 2",
  compute: ({ theta_ci, theta_ce }) => (theta_ci + theta_ce) / 2,
  shape: "monotone",
  valid: "both lobes on one camshaft; of two camshafts it is what the timing gives",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { theta_ci: "110 deg", theta_ce: "114 deg" }, expect: "112.0 deg" }],
  display: true,
});
