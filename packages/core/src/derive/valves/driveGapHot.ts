import { hotClearanceFromCold } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../tables/referenceTemperature.ts";
import { STEEL } from "../../tables/usualMetals.ts";
import { quantity } from "../Quantity.ts";

interface DriveGap {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly cold: readonly [symbol: string, path: string];
  readonly size: readonly [symbol: string, path: string];
  readonly valid: string;
  readonly given: Readonly<Record<string, string>>;
  /** With a pushrod drive, which is held by the block, and with a drive that the head holds. */
  readonly expect: readonly [inBlock: string, inHead: string];
}

const inBlock = ["alpha_b", "T_b"] as const;
const inHead = ["alpha_h", "T_h"] as const;

/** What the kind of drive hangs in: with pushrods the block, with an overhead camshaft the head. */
const holds = { pushrod: inBlock, rocker: inHead, finger: inHead, bucket: inHead } as const;

/** Declares the clearance of a steel part of the valve drive in block or head when the engine is hot. */
export function driveGapHot({ cold, size, given, expect, ...own }: DriveGap) {
  const [gap, d] = [cold[0], size[0]];
  const formula = ([alpha, T]: readonly [string, string]) =>
    `${gap} + ${d} * (${alpha} - ${STEEL.expansionText}) * (${T} - ${REFERENCE_TEMPERATURE})`;
  const warm = { alpha_b: "11e-6 1/K", T_b: "95 degC", alpha_h: "21.5e-6 1/K", T_h: "110 degC" };
  return quantity({
    ...own,
    unit: "mm",
    decimals: 3,
    system: "valve-train",
    inputs: {
      [gap]: cold[1],
      [d]: size[1],
      alpha_b: "block.expansion",
      T_b: "conditions.blockTemperature",
      alpha_h: "cylinderHead.expansion",
      T_h: "conditions.headTemperature",
    } as Readonly<Record<string, string>>,
    choices: { kind: "valveDrive.kind" },
    method:
      "The cold clearance, and what the block (pushrods) or the head (overhead camshaft) outgrows the part by.",
    cases: Object.fromEntries(Object.entries(holds).map(([kind, held]) => [kind, formula(held)])),
    compute: (n, { kind }) => {
      const [alpha, T] = holds[kind as keyof typeof holds];
      return hotClearanceFromCold({
        coldClearance: n[gap]!,
        diameter: n[d]!,
        outerExpansion: n[alpha]!,
        innerExpansion: STEEL.expansion,
        temperatureRise: n[T]! - REFERENCE_TEMPERATURE,
      });
    },
    shape: "monotone",
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the part’s steel" }],
    examples: [
      { given: { ...given, ...warm, kind: "pushrod" }, expect: expect[0] },
      { given: { ...given, ...warm, kind: "bucket" }, expect: expect[1] },
    ],
    display: true,
  });
}
