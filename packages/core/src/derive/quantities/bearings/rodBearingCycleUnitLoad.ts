import { bearings } from "../../bearings/Bearing.ts";
import { cycleUnitLoad } from "../../bearings/cycleUnitLoad.ts";

export const rodBearingCycleUnitLoad = cycleUnitLoad(bearings.rod, {
  id: "rodBearingCycleUnitLoad",
  name: "Rod bearing greatest unit load over the cycle",
  symbol: "p_rg",
  meaning:
    "Greatest load of the cycle over the loaded area, at the power speed, with the relief that inertia gives against the gas.",
  load: ["F_cp", "greatestCrankpinLoad", "61.4 kN"],
  expect: "72.7 MPa",
});
