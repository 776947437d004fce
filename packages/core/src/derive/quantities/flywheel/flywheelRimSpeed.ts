import { quantity } from "../../Quantity.ts";

export const flywheelRimSpeed = quantity({
  id: "flywheelRimSpeed",
  name: "Rim speed of the flywheel",
  symbol: "v_f",
  unit: "m/s",
  decimals: 1,
  system: "flywheel",
  meaning: "Speed of the flywheel’s edge at overspeed. What flies off at this speed goes through a floor.",
  inputs: { n_o: "targets.overspeed", D_f: "flywheel.outerDiameter" },
  formula: "n_o * D_f / 2",
  compute: ({ n_o, D_f }) => (n_o * D_f) / 2,
  shape: "monotone",
  valid: "any disc",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_o: "8200 rpm", D_f: "250 mm" }, expect: "107.3 m/s" }],
  display: true,
});
