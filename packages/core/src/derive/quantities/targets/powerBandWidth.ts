import { quantity } from "../../Quantity.ts";

export const powerBandWidth = quantity({
  id: "powerBandWidth",
  name: "Width of the power band",
  symbol: "Delta_n",
  unit: "rpm",
  decimals: 0,
  system: "targets",
  meaning:
    "From the speed of the greatest torque up to that of the greatest power: the range in which the engine pulls best. A narrow one asks for gears that lie close together.",
  inputs: { n_Pmax: "greatestPowerSpeed", n_T: "greatestTorqueSpeed" },
  formula: "n_Pmax - n_T",
  compute: ({ n_Pmax, n_T }) => n_Pmax - n_T,
  shape: "monotone",
  valid: "both peaks on the curve as entered; other people draw the band elsewhere",
  sources: [{ id: "common-practice", where: "from greatest torque to greatest power" }],
  examples: [{ given: { n_Pmax: "7400 rpm", n_T: "5500 rpm" }, expect: "1900 rpm" }],
  display: true,
});
