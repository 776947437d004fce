import { thermalGrowth as growthOf } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { quantity } from "./Quantity.ts";

/** What sets the growth of one link of the stack apart from another's. */
interface ThermalGrowth {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** Symbol and path of the size, the expansion and the temperature. */
  readonly size: readonly [symbol: string, path: string, example: string];
  readonly expansion: readonly [symbol: string, path: string, example: string];
  readonly temperature: readonly [symbol: string, path: string, example: string];
  readonly expect: string;
}

/** Declares the growth of one dimension of one part from 20 °C to full load. */
export function thermalGrowth({ size, expansion, temperature, expect, ...own }: ThermalGrowth) {
  const [one, alpha, hot] = [size[0], expansion[0], temperature[0]];
  return quantity({
    ...own,
    unit: "mm",
    decimals: 3,
    system: "compression",
    inputs: { [one]: size[1], [alpha]: expansion[1], [hot]: temperature[1] } as Readonly<
      Record<string, string>
    >,
    formula: `${alpha} * ${one} * (${hot} - ${REFERENCE_TEMPERATURE})`,
    compute: (n) =>
      growthOf({ size: n[one]!, expansion: n[alpha]!, temperatureRise: n[hot]! - REFERENCE_TEMPERATURE }),
    shape: "monotone",
    valid: "one mean temperature for the whole part; measured cold at 20 °C",
    sources: [{ id: "definition" }],
    examples: [{ given: { [one]: size[2], [alpha]: expansion[2], [hot]: temperature[2] }, expect }],
    display: true,
  });
}
