import { bearings } from "../../bearings/Bearing.ts";
import { temperatureRise } from "../../bearings/temperatureRise.ts";

export const rodBearingTemperatureRise = temperatureRise(bearings.rod, {
  flows: [["Q_r", "rodBearingFlow", "0.6 L/min"]],
  meaning:
    "How much warmer the oil leaves the loaded film of a rod bearing than it came, if it carried all the heat away. Oil pushed through by pressure and the rod itself take a good part of it.",
  expect: "24 K",
});
