import { bearings } from "../../bearings/Bearing.ts";
import { cycleUnitLoad } from "../../bearings/cycleUnitLoad.ts";

export const mainBearingCycleUnitLoad = cycleUnitLoad(bearings.main, {
  id: "mainBearingCycleUnitLoad",
  name: "Main bearing greatest unit load over the cycle",
  symbol: "p_mg",
  meaning:
    "Greatest load of any main bearing over the cycle on its loaded area, at the power speed, its two throws added up.",
  load: ["F_mg", "mainBearingGreatestLoad", "40 kN"],
  expect: "47.3 MPa",
});
