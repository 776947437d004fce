import { quantity } from "../../Quantity.ts";

export const openSpringForce = quantity({
  id: "openSpringForce",
  name: "Spring force at full lift",
  symbol: "F_o",
  unit: "N",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Force of the valve spring with its valve fully open: the larger of inlet and exhaust, which loads wire, lobe and pushrod most.",
  inputs: { F_oi: "inletOpenSpringForce", F_oe: "exhaustOpenSpringForce" },
  formula: "max(F_oi, F_oe)",
  compute: ({ F_oi, F_oe }) => Math.max(F_oi, F_oe),
  shape: "monotone",
  valid: "springs of constant rate; the same spring on inlet and exhaust",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_oi: "2228 N", F_oe: "2196 N" }, expect: "2228 N" }],
});
