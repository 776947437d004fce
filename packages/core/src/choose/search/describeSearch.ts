import { countOf } from "../../read/countOf.ts";
import { DISCLAIMER } from "../../report/describeReport.ts";
import type { DocumentItem, DocumentLine, ReportDocument } from "../../report/ReportDocument.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { describeFallen } from "./describeFallen.ts";
import { aimNames, aims, scoreOf } from "./Objective.ts";
import { printCount } from "./printCount.ts";
import type { FoundParts, SearchResult, SearchTerms } from "./SearchResult.ts";

/** As many ids as are named. */
const NAMED = 6;

/** Relative margins are shares: two digits say what there is to say. */
const share = (value: number) => value.toFixed(2).replace("-", "−");

/** What a combination comes to by weights, as money; undefined where it has no margin and that counts. */
function weighed(found: FoundParts, { weights }: SearchTerms): number | undefined {
  // What is not known does not count either: it was refused otherwise.
  const { cost = 0, mass = 0, time = 0, margin } = found;
  const sum = scoreOf(weights, { cost, mass, time, margin: margin?.value });
  return Number.isFinite(sum) ? sum : undefined;
}

const aimsOf = ({ weights }: SearchTerms) => aimNames.filter((aim) => weights[aim] > 0);

function totalsOf(found: FoundParts, terms: SearchTerms): string {
  const { cost, mass, time, margin } = found;
  const { currency = "" } = terms;
  const sum = aimsOf(terms).length > 1 ? weighed(found, terms) : undefined;
  return [
    ...(sum === undefined ? [] : [`weighed ${sum.toFixed(2).replace("-", "−")} ${currency}`.trim()]),
    ...(cost === undefined ? [] : [`${cost.toFixed(2)} ${currency}`.trim()]),
    ...(mass === undefined ? [] : [formatNumber(mass, "kg", { decimals: 3 })]),
    ...(time === undefined ? [] : [`there in ${formatNumber(time, "d", { digits: 4 })}`]),
    ...(margin === undefined
      ? terms.weights.margin > 0
        ? ["no margin is known of it"]
        : []
      : [`least margin ${share(margin.value)}`]),
  ].join(" · ");
}

function named(ids: readonly string[]): string {
  const more = ids.length - NAMED;
  return [...ids.slice(0, NAMED), ...(more > 0 ? [`${more} more`] : [])].join(", ");
}

function stopsOf({ stops }: FoundParts): readonly DocumentLine[] {
  const { holds, open, unknown, toConfirm, notApplicable } = stops;
  const settled = `${countOf(holds, "stop rule")} surely ${holds === 1 ? "holds" : "hold"}, ${notApplicable} not applicable${toConfirm === 0 ? "" : `, ${toConfirm} to be confirmed by a person`}`;
  return [
    { label: "rules", text: settled },
    ...(open.length === 0
      ? []
      : [{ label: "open", text: `${open.length}: ${named(open)}`, tone: "doubt" as const }]),
    ...(unknown.length === 0
      ? []
      : [{ label: "unknown", text: `${unknown.length}: ${named(unknown)}`, tone: "doubt" as const }]),
  ];
}

function foundItem(found: FoundParts, number: number, { kinds, terms }: SearchResult): DocumentItem {
  const labels = new Map(kinds.map(({ part, label }) => [part, label]));
  const { margin } = found;
  const settled = found.stops.open.length + found.stops.unknown.length === 0;
  return {
    title: `${number}. ${totalsOf(found, terms)}`,
    tone: settled ? "good" : "doubt",
    lines: [
      ...found.parts.map(({ part, id, name }, index) => ({
        ...(index === 0 ? { label: "parts" } : {}),
        text: `${(labels.get(part) ?? part).toLowerCase()} ${id}${name === undefined ? "" : `: ${name}`}`,
      })),
      ...(found.aims ?? []).map(({ label, unit = "1", decimals, value }) => ({
        label: "aim",
        text: `${label} ${value === undefined ? "cannot be worked out: inputs are missing" : formatNumber(value, unit, decimals === undefined ? {} : { decimals })}`,
      })),
      ...(margin === undefined ? [] : [{ label: "nearest", text: `to its limit: ${margin.rule}` }]),
      ...stopsOf(found),
    ],
  };
}

/** What was compared, for people. */
export function objectiveOf({ terms }: SearchResult): string {
  const used = aimsOf(terms);
  if (used.length === 1) return aims[used[0]!];
  return `a weighted sum of ${used.join(", ")}`;
}

function leadOf(result: SearchResult): readonly DocumentLine[] {
  const { best, front, combinations, reached, outranked, complete, kinds, terms, unseen, shard } = result;
  const found = best.length + (front?.length ?? 0);
  const all = `${printCount(combinations)} of ${countOf(kinds.length, "kind")} of parts`;
  const lines: DocumentLine[] = [];
  if (!complete)
    lines.push({
      text: "Stopped before the end: better ones may be among those not looked at.",
      tone: "bad",
    });
  lines.push(
    reached === 0
      ? { text: complete ? `None of ${all} fits.` : `None was found so far among ${all}.`, tone: "bad" }
      : {
          text: `Searched ${complete ? "" : "a part of "}${all} by ${objectiveOf(result)}.`,
          tone: complete ? "good" : "doubt",
        },
  );
  const rest = terms.countAll
    ? ""
    : `; ${printCount(outranked)} could not be among the best, whether they fit or not`;
  lines.push({ text: `${printCount(reached)} fit to the end${rest}.`, tone: "faint" });
  const blind = [...best, ...(front ?? [])].filter(({ stops }) => stops.unknown.length > 0).length;
  if (blind > 0)
    lines.push({
      text: `Some stop rules are unknown for ${blind === found ? "each" : String(blind)} of those found, since a part or the build does not state what they need. That takes nothing out here, so a part gains by what is not stated of it; demand that rules are known (--known) to take such combinations out.`,
      tone: "doubt",
    });
  if (shard.of > 1)
    lines.push({ text: `Shard ${shard.part} of ${shard.of}: merge it with the others.`, tone: "doubt" });
  if (unseen.length > 0)
    lines.push({
      text: `Confirmed of parts that are exchanged, so to be confirmed again: ${named(unseen)}.`,
      tone: "doubt",
    });
  return lines;
}

/** Lays out what a search found: the best, the front, and why the rest fell out. */
export function describeSearch(result: SearchResult): ReportDocument {
  const { best, front = [], terms } = result;
  return {
    title: result.build,
    lead: leadOf(result),
    sections: [
      ...(best.length === 0
        ? []
        : [
            {
              heading: `The best by ${objectiveOf(result)}`,
              items: best.map((found, index) => foundItem(found, index + 1, result)),
            },
          ]),
      ...(front.length === 0
        ? []
        : [
            {
              heading: `No other beats these in ${terms.front.join(", ")} together`,
              items: front.map((found, index) => foundItem(found, index + 1, result)),
            },
          ]),
      ...describeFallen(result),
    ],
    closing: [DISCLAIMER],
  };
}
