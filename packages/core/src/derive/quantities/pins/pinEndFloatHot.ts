import { STEEL } from "../../../tables/usualMetals.ts";
import { gapHot } from "../../gapHot.ts";

const temperature = ["T_pin", "conditions.pinTemperature"] as const;

export const pinEndFloatHot = gapHot({
  id: "pinEndFloatHot",
  name: "Pin end float, hot",
  symbol: "E_ph",
  system: "pins",
  meaning:
    "Play of the pin between its retainers at full load: an aluminium piston carries the grooves apart by more than pin and retainers grow.",
  cold: ["E_p", "pinEndFloat"],
  around: [
    { size: ["L_rg", "piston.retainerSpan"], expansion: ["alpha_p", "piston.expansion"], temperature },
  ],
  within: [
    { size: ["l_p", "pistonPin.length"], expansion: STEEL, temperature },
    { times: 2, size: ["t_r", "piston.retainerThickness"], expansion: STEEL, temperature },
  ],
  valid: "a steel pin; pin, retainers and bosses at one temperature",
  given: {
    E_p: "0.25 mm",
    L_rg: "59.85 mm",
    alpha_p: "22.3e-6 1/K",
    l_p: "56.4 mm",
    t_r: "1.6 mm",
    T_pin: "150 degC",
  },
  expect: "0.331 mm",
});
