import { rodAlloys } from "../../../tables/alloys.ts";
import { hotStrength } from "../../hotStrength.ts";

export const rodYieldHot = hotStrength({
  id: "rodYieldHot",
  name: "Yield strength of the rod, hot",
  symbol: "R_rw",
  system: "rods",
  kind: "yield",
  alloys: rodAlloys,
  choice: "connectingRod.alloy",
  cold: ["R_r", "connectingRod.yieldStrength"],
  temperature: ["T_rod", "conditions.rodTemperature"],
  meaning:
    "Yield strength of the connecting rod at the temperature at which it runs. Steel keeps nearly all of it, titanium loses a fifth, aluminium more with every hour.",
  given: { R_r: "1050 MPa", T_rod: "120 degC", alloy: "quenched-steel" },
  expect: "995 MPa",
});
