import { gapHot } from "../../gapHot.ts";

export const rodSideClearanceHot = gapHot({
  id: "rodSideClearanceHot",
  name: "Rod side clearance, hot",
  symbol: "C_sdh",
  system: "rods",
  meaning:
    "Play of the rods along their crankpin at full load. Rods of aluminium outgrow the steel crankpin and close it; rods of titanium open it.",
  cold: ["C_sd", "rodSideClearance"],
  around: [
    {
      size: ["L_cp", "crankshaft.crankpinLength"],
      expansion: ["alpha_c", "crankshaft.expansion"],
      temperature: ["T_c", "conditions.crankshaftTemperature"],
    },
  ],
  within: [
    {
      times: ["n_r", "crankshaft.rodsPerPin"],
      size: ["w", "connectingRod.bigEndWidth"],
      expansion: ["alpha_r", "connectingRod.expansion"],
      temperature: ["T_rod", "conditions.rodTemperature"],
    },
  ],
  valid: "rods guided at the crankpin; each part at one temperature",
  given: {
    C_sd: "0.40 mm",
    L_cp: "48.1 mm",
    alpha_c: "12e-6 1/K",
    T_c: "110 degC",
    n_r: "2",
    w: "23.85 mm",
    alpha_r: "23.3e-6 1/K",
    T_rod: "120 degC",
  },
  expect: "0.341 mm",
});
