import { mainBearingLoad } from "../../bearings/mainBearingLoad.ts";

export const mainBearingGreatestLoad = mainBearingLoad({
  id: "mainBearingGreatestLoad",
  name: "Greatest load of a main bearing",
  symbol: "F_mg",
  meaning:
    "Largest load of any main bearing at any moment of the cycle, at the power speed, its two throws and their counterweights added up.",
  take: "greatest",
  expect: ["42.3 kN", "42.3 kN", "30.7 kN"],
});
