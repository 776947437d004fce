import { pistonAlloys } from "../../../tables/alloys.ts";
import { hotStrength } from "../../hotStrength.ts";

export const crownYieldHot = hotStrength({
  id: "crownYieldHot",
  name: "Yield strength of the crown, hot",
  symbol: "R_pw",
  system: "pistons",
  kind: "yield",
  alloys: pistonAlloys,
  choice: "piston.alloy",
  cold: ["R_ps", "piston.yieldStrength"],
  temperature: ["T_cr", "conditions.crownTemperature"],
  meaning:
    "Yield strength of the piston where its crown is bent most, at full load. Above about 200 °C aluminium loses it fast, and the more the longer it is hot.",
  given: { R_ps: "372 MPa", T_cr: "230 degC", alloy: "2618" },
  expect: "207 MPa",
});
