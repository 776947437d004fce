import { oilTemperatureRise } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingTemperatureRise = quantity({
  id: "rodBearingTemperatureRise",
  name: "Heating of the oil in a rod bearing",
  symbol: "Delta_T_r",
  unit: "K",
  decimals: 0,
  system: "bearings",
  meaning:
    "How much warmer the oil leaves the loaded film of a rod bearing than it came, if it carried all the heat away. Oil pushed through by pressure and the rod itself take a good part of it.",
  inputs: {
    P_fr: "rodBearingFriction",
    Q_r: "rodBearingFlow",
    rho_o: "oil.density",
    c_o: "oil.heatCapacity",
  },
  formula: "P_fr / (rho_o * c_o * Q_r)",
  compute: ({ P_fr, Q_r, rho_o, c_o }) =>
    oilTemperatureRise({ frictionPower: P_fr, flow: Q_r, density: rho_o, heatCapacity: c_o }),
  shape: "guarded",
  valid: "upper bound",
  sources: [{ id: "shigley", where: "journal bearings" }],
  examples: [
    { given: { P_fr: "400 W", Q_r: "0.6 L/min", rho_o: "800 kg/m3", c_o: "2100 J/(kg K)" }, expect: "24 K" },
  ],
  display: true,
});
