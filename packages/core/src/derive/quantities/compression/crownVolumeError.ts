import { quantity } from "../../Quantity.ts";

export const crownVolumeError = quantity({
  id: "crownVolumeError",
  name: "Crown volume measured against the sheet",
  symbol: "Delta_Vpm",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "How much larger the crown volume of the fill test is than that entered, pockets included. More than the two uncertainties together means that a sign, the pockets or the sheet are wrong.",
  inputs: { V_pm: "crownVolumeMeasured", V_p: "piston.crownVolume", V_vp: "piston.valvePocketVolume" },
  formula: "V_pm - V_p - V_vp",
  compute: ({ V_pm, V_p, V_vp }) => V_pm - V_p - V_vp,
  shape: "monotone",
  valid: "as for the fill test",
  sources: [{ id: "definition" }],
  examples: [{ given: { V_pm: "16.83 cm3", V_p: "13.8 cm3", V_vp: "2.5 cm3" }, expect: "0.53 cm3" }],
  display: true,
});
