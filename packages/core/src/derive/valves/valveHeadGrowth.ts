import { thermalGrowth } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../tables/referenceTemperature.ts";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** How far the edge of a valve moves outwards as its head warms up. */
export function valveHeadGrowth(side: Side, [temperature, expect]: readonly [string, string]) {
  const { word, index, part } = sides[side];
  const [d, alpha, T] = [`d_${index}`, `alpha_v${index}`, `T_v${index}`];
  return quantity({
    id: `${side}ValveHeadGrowth`,
    name: `Growth of the ${side} valve’s edge`,
    symbol: `Delta_r${index}`,
    unit: "mm",
    decimals: 3,
    system: "valve-train",
    meaning: `${word} valve: how far the edge of the head moves away from the stem’s axis from 20 °C to full load. It comes off the room to the other valve, to the cylinder wall and to the wall of the pocket.`,
    inputs: {
      [d]: `${part}.headDiameter`,
      [alpha]: `${part}.expansion`,
      [T]: `conditions.${side}ValveHeadTemperature`,
    } as Readonly<Record<string, string>>,
    formula: `${d} / 2 * ${alpha} * (${T} - ${REFERENCE_TEMPERATURE})`,
    compute: (n) =>
      thermalGrowth({
        size: n[d]! / 2,
        expansion: n[alpha]!,
        temperatureRise: n[T]! - REFERENCE_TEMPERATURE,
      }),
    shape: "monotone",
    valid: "one mean temperature for the head",
    sources: [{ id: "plane-geometry" }],
    examples: [{ given: { [d]: "30 mm", [alpha]: "17.5e-6 1/K", [T]: temperature }, expect }],
    display: true,
  });
}
