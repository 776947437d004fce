import { STEEL } from "../../../tables/usualMetals.ts";
import { gapHot } from "../../gapHot.ts";

const temperature = ["T_c", "conditions.crankshaftTemperature"] as const;

export const rollerBigEndClearanceHot = gapHot({
  id: "rollerBigEndClearanceHot",
  name: "Radial play of a roller big end, hot",
  symbol: "C_rolh",
  system: "bearings",
  meaning:
    "Play across the diameter of a big end on rollers at full load. A crankpin that runs hotter than the eye about it takes play away; without any the rollers skid and the cage breaks.",
  cold: ["C_rol", "rollerBigEndClearance"],
  around: [
    {
      size: ["D_Hr", "connectingRod.bigEndBore"],
      expansion: ["alpha_r", "connectingRod.expansion"],
      temperature: ["T_rod", "conditions.rodTemperature"],
    },
  ],
  within: [
    {
      size: ["D_p", "crankshaft.crankpinDiameter"],
      expansion: ["alpha_c", "crankshaft.expansion"],
      temperature,
    },
    { times: 2, size: ["d_rol", "rodBearing.rollerDiameter"], expansion: STEEL, temperature },
  ],
  valid: "steel rollers as hot as the crankpin",
  given: {
    C_rol: "0.020 mm",
    D_Hr: "44.02 mm",
    alpha_r: "12e-6 1/K",
    T_rod: "120 degC",
    D_p: "36 mm",
    alpha_c: "12e-6 1/K",
    d_rol: "4 mm",
    T_c: "135 degC",
  },
  expect: "0.012 mm",
});
