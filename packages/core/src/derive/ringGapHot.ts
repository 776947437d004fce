import { hotRingGap } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { IRON } from "../tables/usualMetals.ts";
import { quantity } from "./Quantity.ts";

interface RingGap {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly which: "top" | "second";
  /** Symbols of the gap and of the ring’s temperature. */
  readonly gap: "s_1" | "s_2";
  readonly temperature: "T_r" | "T_r2";
  readonly examples: readonly [
    { given: Record<string, string>; expect: string },
    ...{ given: Record<string, string>; expect: string }[],
  ];
  readonly display?: true;
}

/** Declares what is left of a ring’s end gap when the engine is hot. */
export function ringGapHot({ which, gap, temperature, ...own }: RingGap) {
  return quantity({
    ...own,
    unit: "mm",
    decimals: 3,
    system: "rings",
    meaning: `What is left of the ${which} ring’s end gap at full load, when ring and cylinder have warmed up from 20 °C; at zero the ends butt and the ring seizes. The bore is taken as cast iron, which is also what most aluminium blocks are lined with.`,
    inputs: {
      [gap]: `ringSet.${which}RingEndGap`,
      B: "block.bore",
      alpha_ri: "ringSet.expansion",
      [temperature]: `conditions.${which}RingTemperature`,
      T_w: "conditions.cylinderTopTemperature",
    } as Readonly<Record<string, string>>,
    formula: `${gap} - pi * B * (alpha_ri * (${temperature} - ${REFERENCE_TEMPERATURE}) - ${IRON.expansionText} * (T_w - ${REFERENCE_TEMPERATURE}))`,
    compute: (n) =>
      hotRingGap({
        coldGap: n[gap]!,
        bore: n.B!,
        ringExpansion: n.alpha_ri!,
        ringTemperatureRise: n[temperature]! - REFERENCE_TEMPERATURE,
        boreExpansion: IRON.expansion,
        boreTemperatureRise: n.T_w! - REFERENCE_TEMPERATURE,
      }),
    shape: "monotone",
    valid: `a cast-iron bore (${IRON.expansion * 1e6}·10⁻⁶ 1/K); a bore in bare aluminium grows more and leaves more gap`,
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of cast iron" }],
  });
}
