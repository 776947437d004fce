import {
  aspects,
  type BuildChange,
  type Cause,
  fieldLabel,
  formatInterval,
  printBand,
  type QuantityChange,
  type Report,
  type ReportField,
  type ReportVerdict,
  type ValueChange,
  type VerdictChange,
} from "trialfit";
import type {
  Both,
  CausesView,
  CauseView,
  NumberRow,
  PairView,
  SideView,
  SizeRow,
  VerdictRow,
} from "../pairProtocol.ts";
import type { Trouble } from "../protocol.ts";
import { countsOf } from "./countsOf.ts";
import { glanceOf } from "./glanceOf.ts";

/** So many causes are named of each. */
const MOST_CAUSES = 4;
/** Part of the largest effect below which another is not worth a word. */
const MINOR = 0.005;

type Of<T> = (key: string) => T | undefined;

const finder = <T>(all: readonly T[], key: (one: T) => string): Of<T> => {
  const found = new Map(all.map((one) => [key(one), one]));
  return (name) => found.get(name);
};

const both = <T, R>([bench, other]: Both<T>, make: (one: T) => R): Both<R> => [make(bench), make(other)];

function sideOf({ build, summary, pending }: Report): SideView {
  return { name: build.name, sound: summary.sound, counts: countsOf(summary, pending) };
}

/** A story or a table is not compared by reading all of it. */
const LONGEST = 120;
const shortened = (text: string) => (text.length > LONGEST ? `${text.slice(0, LONGEST).trimEnd()}…` : text);

/** A signed difference, with a true minus sign. */
const signed = (change: number, unit: string, decimals: number): string =>
  `${change < 0 ? "−" : "+"}${formatInterval(Math.abs(change), unit, { decimals })}`;

/** What is taken for the tolerance of a dimension that states none. */
function takenFor(field: ReportField | undefined): string | undefined {
  const { nominal, low, high, unit, toleranceFrom } = field ?? {};
  if (nominal === undefined || low === undefined || high === undefined || unit === undefined)
    return undefined;
  if (toleranceFrom === "stated" || high === low) return undefined;
  const [up, down] = [formatInterval(high - nominal, unit), formatInterval(nominal - low, unit)];
  return up === down ? `± ${up} taken` : `+${up} / −${down} taken`;
}

/** How far one nominal size is from the other; undefined where it is not, or where there is none. */
function differenceOf([bench, other]: Both<ReportField | undefined>): string | undefined {
  if (bench?.nominal === undefined || other?.nominal === undefined || bench.unit === undefined)
    return undefined;
  const change = bench.nominal - other.nominal;
  const size = formatInterval(Math.abs(change), bench.unit);
  return Math.abs(change) > 1e-12 * Math.abs(bench.nominal)
    ? `${size} ${change > 0 ? "more" : "less"}`
    : undefined;
}

function sizeRow(
  { path, label, before, after, aspects: found }: ValueChange,
  fields: Both<Of<ReportField>>,
): SizeRow {
  const pair = both(fields, (of) => of(path));
  const by = differenceOf(pair);
  const others = found.filter((one) => one !== "value").map((one) => aspects[one]);
  const came =
    after === undefined ? "only in the other" : before === undefined ? "only in this build" : undefined;
  const beside = by === undefined ? (others.length === 0 ? "another word" : others.join(", ")) : by;
  const texts = both([after, before], (text) => (text === undefined ? undefined : shortened(text)));
  return { path, label, texts, taken: both(pair, takenFor), by: came ?? beside };
}

/** Ends and middle of both bands: how far they moved, as a share of what they are; less than any where one has none. */
function shift({ before, after }: QuantityChange): number {
  if (before === undefined || after === undefined) return -1;
  const ends = ["low", "nominal", "high"] as const;
  const scale = Math.max(...ends.flatMap((end) => [Math.abs(before[end]), Math.abs(after[end])]));
  return Math.max(...ends.map((end) => Math.abs(after[end] - before[end]))) / scale;
}

function causeView({ path, change }: Cause, { name, unit, decimals }: QuantityChange): CauseView {
  return { path, label: fieldLabel(path), text: `${name} ${signed(change, unit, decimals)}` };
}

const telling = (causes: readonly Cause[]): readonly Cause[] =>
  causes.filter(({ change }) => Math.abs(change) >= MINOR * Math.abs(causes[0]!.change));

function few(causes: readonly CauseView[]): CausesView {
  return { causes: causes.slice(0, MOST_CAUSES), others: Math.max(0, causes.length - MOST_CAUSES) };
}

/** What of the changed values moved a verdict: by what they do to what the rule compares, else all on which it rests. */
function causesOf({ because, compared }: VerdictChange, quantityOf: Of<QuantityChange>): CausesView {
  const moved = compared.flatMap((id) => quantityOf(id) ?? []);
  const weighed = moved.flatMap((one) => telling(one.causes).map((cause) => causeView(cause, one)));
  const named = new Set(weighed.map(({ path }) => path));
  // What came or went has no effect in numbers, and what a rule compares itself moves no quantity.
  const plain = because
    .filter((path) => !named.has(path) && (weighed.length === 0 || compared.includes(path)))
    .map((path) => ({ path, label: fieldLabel(path) }));
  return few([...plain, ...weighed]);
}

function verdictRow(
  one: VerdictChange,
  verdicts: Both<Of<ReportVerdict>>,
  quantityOf: Of<QuantityChange>,
): VerdictRow {
  const { rule, title, weight, before, after } = one;
  const glances = both(verdicts, (of) => {
    const verdict = of(rule);
    return verdict === undefined ? undefined : glanceOf(verdict);
  });
  return { rule, title, weight, words: [after, before], glances, ...causesOf(one, quantityOf) };
}

function numberRow(one: QuantityChange): NumberRow {
  const { id, name, unit, decimals, before, after } = one;
  const print = (span: typeof before) =>
    span === undefined ? "not computable" : printBand(span, unit, decimals);
  const change = before === undefined || after === undefined ? 0 : after.nominal - before.nominal;
  const by = change === 0 ? (after && before ? "its tolerances alone" : "") : signed(change, unit, decimals);
  return {
    id,
    name,
    texts: [print(after), print(before)],
    by,
    ...few(
      telling(one.causes).map((cause) => ({
        ...causeView(cause, one),
        text: signed(cause.change, unit, decimals),
      })),
    ),
  };
}

/** Quantities that a rule of either build compares. */
function decidingOf(reports: Both<Report>): ReadonlySet<string> {
  const compared = reports.flatMap(({ verdicts }) =>
    verdicts.flatMap(({ comparisons }) =>
      comparisons
        .filter((one) => one.in === "requires")
        .flatMap(({ fact, againstName = fact }) => [fact, againstName]),
    ),
  );
  return new Set(compared);
}

/**
 * Two builds as they stand side by side.
 * @param change from the other to the one on the bench
 * @param reports of the one on the bench and of the other
 * @param troubles what of the other cannot be read
 */
export function viewPair(change: BuildChange, reports: Both<Report>, troubles: readonly Trouble[]): PairView {
  const fields = both(reports, ({ fields: all }) => finder(all, ({ path }) => path));
  const verdicts = both(reports, ({ verdicts: all }) => finder(all, ({ rule }) => rule));
  const quantityOf = finder(change.quantities, ({ id }) => id);
  const deciding = decidingOf(reports);
  const numbers = change.quantities
    .filter(({ id }) => deciding.has(id))
    .sort((a, b) => shift(b) - shift(a))
    .map(numberRow)
    // A change below the last digit shown tells a reader nothing.
    .filter(({ texts: [bench, other] }) => bench !== other);
  return {
    state: "compared",
    sides: both(reports, sideOf),
    notes: troubles.map(({ text }) => `Left out of the other build: ${text}`),
    sizes: change.values.map((one) => sizeRow(one, fields)),
    verdicts: change.verdicts.map((one) => verdictRow(one, verdicts, quantityOf)),
    numbers,
  };
}
