import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { Judged } from "./Judged.ts";
import { measuring, type SettledWord, settles, type ToMeasure, wordAtNominal } from "./measuring.ts";
import { AT_ONCE, CAREFUL, FINEST, MOST, settleSingly } from "./settleSingly.ts";
import { settleTogether } from "./settleTogether.ts";
import type { Comparison } from "./Verdict.ts";

/** What would make an open verdict certain. */
export interface Settlement {
  /** What it becomes at the nominal values. */
  readonly becomes: SettledWord;
  /**
   * How the measured sizes must come out for that: as expected, within the uncertainty; the same, so finely that
   * hardly anyone can, since the expected value lies next to the limit; or, where it lies on the limit, clear of it:
   * then what it becomes depends on the side.
   */
  readonly provided: "as-expected" | "as-expected-finely" | "clear-of-limit";
  readonly measure: readonly ToMeasure[];
}

/** How far one input alone can carry a comparison towards the other verdict. */
interface Adverse {
  readonly path: string;
  readonly reach: number;
}

/** Part of the room to the limit that the narrowed inputs may take. */
const ENOUGH = 0.98;
/** Tightening tried when what a straight line promises is not enough. */
const TRIALS = [1, 0.7, 0.45, 0.25, 0.1];

function adverseOf(comparison: Comparison, judged: Judged): readonly Adverse[] {
  const { margin, operator } = comparison;
  if (margin === undefined) return [];
  const wants = operator.startsWith("greater") ? 1 : -1;
  const holding = margin.nominal >= 0 ? 1 : -1;
  const side = (fact: string | undefined, sign: 1 | -1): readonly Adverse[] => {
    if (fact === undefined) return [];
    const derivation = judged.derivations.get(fact);
    const value = judged.values.get(fact);
    const ends =
      derivation?.state === "value"
        ? derivation.spread.map(({ path, atLow, atHigh }) => ({
            path,
            moves: [atLow - derivation.nominal, atHigh - derivation.nominal],
          }))
        : value?.kind === "dimension"
          ? [{ path: fact, moves: [value.low - value.nominal, value.high - value.nominal] }]
          : [];
    return ends.map(({ path, moves }) => ({
      path,
      reach: Math.max(0, ...moves.map((move) => -holding * wants * sign * move)),
    }));
  };
  return [...side(comparison.fact, 1), ...side(comparison.againstName, -1)].filter(({ reach }) => reach > 0);
}

/**
 * How far the weightiest inputs must be narrowed for one comparison, by straight lines: as few as can be without
 * asking for more than a careful measurement gives, or the set that asks for the least.
 * @returns undefined at the limit, where no narrowing helps
 */
function narrowing(comparison: Comparison, judged: Judged): ReadonlyMap<string, number> | undefined {
  const room = ENOUGH * Math.abs(comparison.margin?.nominal ?? 0);
  const adverse = [...adverseOf(comparison, judged)].sort((a, b) => b.reach - a.reach);
  const total = adverse.reduce((sum, { reach }) => sum + reach, 0);
  const options = adverse.slice(0, AT_ONCE).map((_, index) => {
    const chosen = adverse.slice(0, index + 1);
    const sum = chosen.reduce((all, { reach }) => all + reach, 0);
    return { chosen, share: Math.min(MOST, (room - (total - sum)) / sum) };
  });
  const best = options.reduce<(typeof options)[number] | undefined>(
    (kept, one) => (kept === undefined || one.share > kept.share ? one : kept),
    undefined,
  );
  const first = options.find(({ share }) => share >= CAREFUL) ?? best;
  if (first === undefined || first.share < FINEST) return undefined;
  return new Map(first.chosen.map(({ path }) => [path, first.share]));
}

/**
 * The fewest dimensions that would settle an open verdict, and the uncertainty to which each must be measured. The
 * straight lines of the sensitivities propose; the proposal is then evaluated with its full band, and tightened
 * until the rule is certain. Where the lines propose nothing of use, as where a quantity turns round within the
 * tolerances, the weightiest dimensions are tried one by one, and at last as many together as it takes.
 * @returns undefined where nothing that could be measured weighs
 */
export function* howToSettle(judged: Judged, catalog: Catalog): Steps<Settlement | undefined> {
  const becomes = yield* wordAtNominal(judged, catalog);
  if (becomes === undefined) return undefined;
  const widths = new Map<string, number>();
  for (const comparison of judged.verdict.comparisons.filter((one) => one.state === "possible")) {
    const proposal = narrowing(comparison, judged);
    for (const [path, share] of proposal ?? []) widths.set(path, Math.min(share, widths.get(path) ?? 1));
  }
  for (const trial of widths.size === 0 ? [] : TRIALS) {
    const measured = measuring(judged, new Map([...widths].map(([path, share]) => [path, trial * share])));
    if (yield* settles(measured, judged, catalog, becomes))
      return { becomes, provided: "as-expected", measure: measured.measure };
  }
  return (yield* settleSingly(judged, catalog, becomes)) ?? (yield* settleTogether(judged, catalog, becomes));
}

/** Adds to an open verdict what would settle it. */
export function* withSettlement(judged: Judged, catalog: Catalog): Steps<Judged> {
  if (judged.verdict.verdict !== "open") return judged;
  const settlement =
    judged.verdict.unmeasured === undefined
      ? yield* howToSettle(judged, catalog)
      : asPublished(judged.verdict.unmeasured, judged);
  return settlement === undefined ? judged : { ...judged, settlement };
}

/** A rule that holds on published sizes holds on measured ones that are known no worse. */
function asPublished(paths: readonly string[], { values }: Judged): Settlement {
  return {
    becomes: "holds",
    provided: "as-expected",
    measure: paths.flatMap((path) => {
      const value = values.get(path);
      return value?.kind === "dimension" ? [{ path, uncertainty: (value.high - value.low) / 2 }] : [];
    }),
  };
}
