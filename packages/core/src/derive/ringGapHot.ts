import { hotRingGap } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { IRON } from "../tables/usualMetals.ts";
import { quantity } from "./Quantity.ts";

interface RingGap {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  /** The ring in words. */
  readonly ring: string;
  /** Symbol and path of the gap and of the ring’s temperature. */
  readonly gap: readonly [symbol: string, path: string];
  readonly temperature: readonly [symbol: string, path: string];
  readonly examples: readonly [
    { given: Record<string, string>; expect: string },
    ...{ given: Record<string, string>; expect: string }[],
  ];
  readonly display?: true;
}

/** Declares what is left of a ring’s end gap when the engine is hot. */
export function ringGapHot({ ring, gap: [gap, gapPath], temperature: [temperature, path], ...own }: RingGap) {
  return quantity({
    ...own,
    unit: "mm",
    decimals: 3,
    system: "rings",
    meaning: `What is left of the ${ring}’s end gap at full load, when ring and cylinder have warmed up from 20 °C; at zero the ends butt and the ring seizes. The bore is taken as cast iron, which is also what most aluminium blocks are lined with.`,
    inputs: {
      [gap]: gapPath,
      B: "block.bore",
      alpha_ri: "ringSet.expansion",
      [temperature]: path,
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
