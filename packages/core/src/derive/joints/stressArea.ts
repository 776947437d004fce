import { threadGeometry } from "@trialfit/mechanics";
import { type QuantityExample, quantity } from "../Quantity.ts";
import type { Joint } from "./Joint.ts";

/** Declares the area of a fastener’s thread that carries tension. */
export function stressArea(
  { prefix, word, part, stressArea: [symbol], system }: Joint,
  examples: readonly [QuantityExample, ...QuantityExample[]],
) {
  return quantity({
    id: `${prefix}StressArea`,
    name: `Stress area of a ${word}`,
    symbol,
    unit: "mm2",
    decimals: 1,
    system,
    meaning: `Area of the thread of a ${word} that carries tension: a circle midway between pitch and root diameter.`,
    inputs: { d: `${part}.threadDiameter`, P: `${part}.threadPitch` },
    formula: "pi / 4 * (d - 13 * sqrt(3) / 24 * P)^2",
    compute: ({ d, P }) => threadGeometry({ majorDiameter: d, pitch: P }).stressArea,
    shape: "monotone",
    valid:
      "metric threads; for inch threads it comes out about 1 % larger than their own tables; pitch below 0.6 of the diameter",
    sources: [{ id: "iso-898-1" }],
    examples,
    display: true,
  });
}
