import { gapWhenHot, type ThermalPart } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import type { UsualMaterial } from "../tables/usualMetals.ts";
import { type Quantity, quantity } from "./Quantity.ts";

type Named = readonly [symbol: string, path: string];

/** One dimension of one part that warms up beside a gap. */
interface Warming {
  readonly size: Named;
  /** How often it stands in the gap, where not once. */
  readonly times?: number | Named;
  readonly expansion: Named | UsualMaterial;
  readonly temperature: Named;
}

interface HotGap extends Pick<Quantity, "id" | "name" | "symbol" | "system" | "meaning" | "valid"> {
  readonly unit?: "um";
  readonly decimals?: number;
  readonly cold: Named;
  /** Parts whose growth opens the gap, and parts whose growth closes it. */
  readonly around: readonly Warming[];
  readonly within: readonly Warming[];
  /** The cold gap may turn round within a tolerance. */
  readonly shape?: "guarded";
  readonly given: Readonly<Record<string, string>>;
  readonly expect: string;
}

type Numbers = Readonly<Record<string, number>>;

const isEntered = (one: Warming["expansion"]): one is Named => Array.isArray(one);

function namesOf({ size, times, expansion, temperature }: Warming): readonly Named[] {
  return [
    ...(typeof times === "object" ? [times] : []),
    size,
    ...(isEntered(expansion) ? [expansion] : []),
    temperature,
  ];
}

function formulaOf({ size, times, expansion, temperature }: Warming): string {
  const often = times === undefined ? "" : `${typeof times === "number" ? times : times[0]} * `;
  const alpha = isEntered(expansion) ? expansion[0] : expansion.expansionText;
  return `${often}${size[0]} * ${alpha} * (${temperature[0]} - ${REFERENCE_TEMPERATURE})`;
}

function partOf({ size, times = 1, expansion, temperature }: Warming, n: Numbers): ThermalPart {
  return {
    size: (typeof times === "number" ? times : n[times[0]]!) * n[size[0]]!,
    expansion: isEntered(expansion) ? n[expansion[0]]! : expansion.expansion,
    temperatureRise: n[temperature[0]]! - REFERENCE_TEMPERATURE,
  };
}

/** Declares what becomes of a cold gap when the parts about it are as hot as at full load. */
export function gapHot({ cold, around, within, given, expect, shape, ...own }: HotGap) {
  const parts = [...around, ...within];
  return quantity({
    unit: "mm",
    decimals: 3,
    ...own,
    inputs: Object.fromEntries([cold, ...parts.flatMap(namesOf)]) as Readonly<Record<string, string>>,
    formula: [
      cold[0],
      ...around.map((one) => `+ ${formulaOf(one)}`),
      ...within.map((one) => `- ${formulaOf(one)}`),
    ].join(" "),
    compute: (n: Numbers) =>
      gapWhenHot({
        gap: n[cold[0]]!,
        around: around.map((one) => partOf(one, n)),
        within: within.map((one) => partOf(one, n)),
      }),
    shape: shape ?? "monotone",
    sources: [
      { id: "plane-geometry" },
      ...(parts.every(({ expansion }) => isEntered(expansion))
        ? []
        : [{ id: "from-memory", where: "expansion of usual metals" }]),
    ],
    examples: [{ given, expect }],
    display: true,
  });
}
