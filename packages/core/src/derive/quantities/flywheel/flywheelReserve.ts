import { quantity } from "../../Quantity.ts";

export const flywheelReserve = quantity({
  id: "flywheelReserve",
  name: "Strength reserve of the flywheel",
  symbol: "S_fw",
  unit: "1",
  decimals: 2,
  system: "flywheel",
  meaning: "Strength of the flywheel’s material over its stress at overspeed.",
  inputs: { R_f: "flywheel.strength", sigma_f: "flywheelStress" },
  formula: "R_f / sigma_f",
  compute: ({ R_f, sigma_f }) => R_f / sigma_f,
  shape: "monotone",
  valid: "as the stress; a burst flywheel kills: maker’s rating and scatter shield come first",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_f: "600 MPa", sigma_f: "188 MPa" }, expect: "3.19" }],
  display: true,
});
