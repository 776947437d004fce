import { thermalPreloadChange } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../tables/referenceTemperature.ts";
import { quantity } from "../Quantity.ts";
import type { HeatedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares what heat does to the preload of a fastener. */
export function heatGain(joint: HeatedJoint, expect: string) {
  const { word, part, index, system, prefix } = joint;
  const { id, clamped, expansion, temperature, fastenerTemperature } = joint.heat;
  const [bolt, give] = [`delta_${index}`, `delta_k${index}`];
  const [alpha, T, T_f] = [expansion[0], temperature[0], fastenerTemperature[0]];
  return quantity({
    id,
    name: `Preload gained by heat, ${word}`,
    symbol: `Delta_F${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `How much the preload of a ${word} grows as the ${clamped} warms up from 20 °C and outgrows it; negative where the fastener grows more. Too much crushes what is clamped and yields the fastener.`,
    inputs: {
      [alpha]: expansion[1],
      alpha_s: `${part}.expansion`,
      l_k: `${part}.grip`,
      [T]: temperature[1],
      [T_f]: fastenerTemperature[1],
      [bolt]: `${prefix}Compliance`,
      [give]: `${prefix}ClampedCompliance`,
    } as Paths,
    formula: `(${alpha} * l_k * (${T} - ${REFERENCE_TEMPERATURE}) - alpha_s * l_k * (${T_f} - ${REFERENCE_TEMPERATURE})) / (${bolt} + ${give})`,
    compute: (n: Numbers) =>
      thermalPreloadChange({
        clamped: [{ size: n.l_k!, expansion: n[alpha]!, temperatureRise: n[T]! - REFERENCE_TEMPERATURE }],
        bolt: [{ size: n.l_k!, expansion: n.alpha_s!, temperatureRise: n[T_f]! - REFERENCE_TEMPERATURE }],
        boltCompliance: n[bolt]!,
        clampedCompliance: n[give]!,
      }),
    shape: "guarded",
    valid: `the grip as one length of the ${clamped}’s metal; elastic; below yield`,
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: {
          [alpha]: "21.5e-6 1/K",
          alpha_s: "12.0e-6 1/K",
          l_k: "150 mm",
          [T_f]: "90 degC",
          [T]: "110 degC",
          [bolt]: "0.0093 mm/kN",
          [give]: "0.0029 mm/kN",
        },
        expect,
      },
    ],
    display: true,
  });
}
