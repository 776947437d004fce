import { quantity } from "../../Quantity.ts";

export const chargeTemperatureGap = quantity({
  id: "chargeTemperatureGap",
  name: "Charge temperature entered above that expected",
  symbol: "Delta_T_m",
  unit: "K",
  decimals: 0,
  system: "charge",
  meaning:
    "Charge temperature entered less that which compressor and cooler give. Far below zero the entered temperature is a hope: the charge will be hotter and thinner, and nearer to knock.",
  inputs: { T_m: "induction.chargeTemperature", T_cc: "cooledChargeTemperature" },
  formula: "T_m - T_cc",
  compute: ({ T_m, T_cc }) => T_m - T_cc,
  shape: "monotone",
  valid: "charged engines",
  sources: [{ id: "definition" }],
  examples: [{ given: { T_m: "318 K", T_cc: "324 K" }, expect: "-6 K" }],
  display: true,
});
