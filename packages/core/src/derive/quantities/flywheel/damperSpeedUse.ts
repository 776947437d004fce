import { quantity } from "../../Quantity.ts";

export const damperSpeedUse = quantity({
  id: "damperSpeedUse",
  name: "Use of the damper’s rated speed",
  symbol: "k_dm",
  unit: "1",
  decimals: 3,
  system: "flywheel",
  meaning: "Overspeed over the speed for which the damper is rated.",
  inputs: { n_o: "targets.overspeed", n_dm: "damper.ratedSpeed" },
  formula: "n_o / n_dm",
  compute: ({ n_o, n_dm }) => n_o / n_dm,
  shape: "monotone",
  valid: "a damper in sound condition: old rubber or fluid lowers what it stands",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_o: "8550 rpm", n_dm: "9000 rpm" }, expect: "0.950" }],
});
