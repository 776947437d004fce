import { pistonAlloys } from "../../../tables/alloys.ts";
import { hotStrength } from "../../hotStrength.ts";

export const crownFatigueHot = hotStrength({
  id: "crownFatigueHot",
  name: "Fatigue strength of the crown, hot",
  symbol: "sigma_wpw",
  system: "pistons",
  kind: "fatigue",
  alloys: pistonAlloys,
  choice: "piston.alloy",
  cold: ["sigma_wp", "piston.fatigueStrength"],
  temperature: ["T_cr", "conditions.crownTemperature"],
  meaning:
    "Stress amplitude about a mean of 0 that the piston stands where its crown is bent most, at full load.",
  given: { sigma_wp: "125 MPa", T_cr: "230 degC", alloy: "2618" },
  expect: "84 MPa",
});
