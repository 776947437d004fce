import { bearings } from "../../bearings/Bearing.ts";
import { temperatureRise } from "../../bearings/temperatureRise.ts";

export const mainBearingTemperatureRise = temperatureRise(bearings.main, {
  flows: [
    ["Q_m", "mainBearingOilFlow", "0.3 L/min"],
    ["Q_ms", "mainBearingSideFlow", "0.3 L/min"],
  ],
  meaning:
    "How much warmer the oil leaves a main bearing than it came, if what is drawn through the film and what is pushed from the groove carried all the heat away. Block and crankshaft take some of it.",
  expect: "24 K",
});
