import { hotClearanceFromCold } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { STEEL } from "../tables/usualMetals.ts";
import { quantity } from "./Quantity.ts";

interface PinClearance {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly cold: readonly [symbol: string, path: string];
  readonly expansion: readonly [symbol: string, path: string];
  readonly meaning: string;
  readonly valid: string;
  readonly given: Readonly<Record<string, string>>;
  readonly expect: string;
}

/** Declares the clearance of the piston pin in a bore when the engine is hot. */
export function pinClearanceHot({ cold, expansion, given, expect, ...own }: PinClearance) {
  return quantity({
    ...own,
    unit: "um",
    decimals: 1,
    system: "pins",
    inputs: {
      [cold[0]]: cold[1],
      d_p: "pistonPin.outerDiameter",
      [expansion[0]]: expansion[1],
      T_pin: "conditions.pinTemperature",
    } as Readonly<Record<string, string>>,
    formula: `${cold[0]} + d_p * (${expansion[0]} - ${STEEL.expansionText}) * (T_pin - ${REFERENCE_TEMPERATURE})`,
    compute: (n) =>
      hotClearanceFromCold({
        coldClearance: n[cold[0]]!,
        diameter: n.d_p!,
        outerExpansion: n[expansion[0]]!,
        innerExpansion: STEEL.expansion,
        temperatureRise: n.T_pin! - REFERENCE_TEMPERATURE,
      }),
    shape: "monotone",
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the pin’s steel" }],
    examples: [{ given, expect }],
    display: true,
  });
}
