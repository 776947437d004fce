import { pinSteels } from "../../../tables/alloys.ts";
import { hotShare, hotShareValid } from "../../hotShare.ts";
import { quantity } from "../../Quantity.ts";

export const pinBendingUseHot = quantity({
  id: "pinBendingUseHot",
  name: "Use of the pin’s allowable stress, hot",
  symbol: "k_pinw",
  unit: "1",
  decimals: 3,
  system: "pins",
  meaning:
    "Bending stress in the pin over the stress that its maker allows, lowered by what its steel loses at the temperature at which it runs.",
  inputs: { k_pin: "pinBendingUse", T_pin: "conditions.pinTemperature" },
  choices: { steel: "pistonPin.steel" },
  method:
    "Use of the allowable stress, over what the table of strengths says is left of the fatigue strength of its steel.",
  compute: ({ k_pin, T_pin }, { steel }) => k_pin / hotShare(pinSteels, steel, "fatigue", T_pin),
  shape: "monotone",
  valid: `an allowable stress that is meant cold; ${hotShareValid}`,
  sources: [{ id: "from-memory", where: "table of strengths" }],
  examples: [{ given: { k_pin: "0.759", T_pin: "150 degC", steel: "case-hardened" }, expect: "0.795" }],
  display: true,
});
