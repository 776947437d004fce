import { rodAlloys } from "../../../tables/alloys.ts";
import { hotStrength } from "../../hotStrength.ts";

export const rodFatigueHot = hotStrength({
  id: "rodFatigueHot",
  name: "Fatigue strength of the rod, hot",
  symbol: "sigma_ww",
  system: "rods",
  kind: "fatigue",
  alloys: rodAlloys,
  choice: "connectingRod.alloy",
  cold: ["sigma_w", "connectingRod.fatigueStrength"],
  temperature: ["T_rod", "conditions.rodTemperature"],
  meaning:
    "Stress amplitude about a mean of 0 that the surface of the connecting rod stands at the temperature at which it runs.",
  given: { sigma_w: "380 MPa", T_rod: "120 degC", alloy: "quenched-steel" },
  expect: "366 MPa",
});
