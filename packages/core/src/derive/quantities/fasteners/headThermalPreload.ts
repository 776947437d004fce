import { thermalPreloadChange } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Linear expansion of the fastener’s steel [1/K]. Source: from memory. */
const STEEL = 12.0e-6;
/** 20 °C, at which the head is tightened [K]. */
const COLD = 293.15;

export const headThermalPreload = quantity({
  id: "headThermalPreload",
  name: "Preload gained by heat, head fastener",
  symbol: "Delta_Fh",
  unit: "kN",
  decimals: 1,
  system: "fasteners",
  meaning:
    "How much the preload of a head fastener grows as the head warms up from 20 °C and outgrows its steel. Too much crushes the gasket and yields the fastener.",
  inputs: {
    alpha_h: "cylinderHead.expansion",
    l_k: "headFastener.grip",
    T_h: "conditions.headTemperature",
    T_hs: "conditions.headFastenerTemperature",
    delta_h: "headFastenerCompliance",
    delta_kh: "headFastenerClampedCompliance",
  },
  formula: "(alpha_h * l_k * (T_h - 293.15) - 12.0e-6 * l_k * (T_hs - 293.15)) / (delta_h + delta_kh)",
  compute: ({ alpha_h, l_k, T_h, T_hs, delta_h, delta_kh }) =>
    thermalPreloadChange({
      clamped: [{ size: l_k, expansion: alpha_h, temperatureRise: T_h - COLD }],
      bolt: [{ size: l_k, expansion: STEEL, temperatureRise: T_hs - COLD }],
      boltCompliance: delta_h,
      clampedCompliance: delta_kh,
    }),
  shape: "guarded",
  valid: "the grip as one length of head metal; elastic; below yield",
  sources: [{ id: "vdi-2230" }, { id: "from-memory", where: "expansion of the fastener" }],
  examples: [
    {
      given: {
        alpha_h: "21.5e-6 1/K",
        l_k: "150 mm",
        T_h: "110 degC",
        T_hs: "90 degC",
        delta_h: "0.0093 mm/kN",
        delta_kh: "0.0029 mm/kN",
      },
      expect: "13.5 kN",
    },
  ],
  display: true,
});
