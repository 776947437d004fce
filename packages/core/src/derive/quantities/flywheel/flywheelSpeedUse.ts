import { quantity } from "../../Quantity.ts";

export const flywheelSpeedUse = quantity({
  id: "flywheelSpeedUse",
  name: "Use of the flywheel’s certified speed",
  symbol: "k_fw",
  unit: "1",
  decimals: 3,
  system: "flywheel",
  meaning: "Overspeed over the speed for which the flywheel is certified.",
  inputs: { n_o: "targets.overspeed", n_fw: "flywheel.ratedSpeed" },
  formula: "n_o / n_fw",
  compute: ({ n_o, n_fw }) => n_o / n_fw,
  shape: "monotone",
  valid: "a flywheel as certified: no further holes, no lightening, no heat cracks",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_o: "9025 rpm", n_fw: "9500 rpm" }, expect: "0.950" }],
});
