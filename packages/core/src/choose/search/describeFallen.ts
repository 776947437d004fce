import { countOf } from "../../read/countOf.ts";
import type { DocumentItem, DocumentSection } from "../../report/ReportDocument.ts";
import { describeMiss } from "./describeMiss.ts";
import { printCount } from "./printCount.ts";
import type { FallenRule, SearchResult, SearchTerms } from "./SearchResult.ts";

/** As many rules as are named. */
const NAMED = 12;

const unsettledLine = (count: number, demand: SearchTerms["demand"]) =>
  demand === "known"
    ? { label: "not known", text: `in ${printCount(count)}: parts do not state what it needs` }
    : { label: "not sure", text: `to hold in ${printCount(count)}, as it is demanded` };

function fallenItem(one: FallenRule, demand: SearchTerms["demand"]): DocumentItem {
  const { rule, title, fails, unsettled, nearest } = one;
  return {
    title,
    id: rule,
    tone: "bad",
    lines: [
      ...(fails === 0 ? [] : [{ label: "fails", text: `in ${printCount(fails)}` }]),
      ...(unsettled === 0 ? [] : [unsettledLine(unsettled, demand)]),
      ...(nearest === undefined ? [] : [{ label: "nearest", text: describeMiss(nearest) }]),
    ],
  };
}

/** Which rules took combinations out, and how near the nearest came. */
export function describeFallen({ fellOut, terms }: SearchResult): readonly DocumentSection[] {
  if (fellOut.length === 0) return [];
  const more = fellOut.length - NAMED;
  return [
    {
      heading: "Why others fell out",
      intro:
        "Each combination is counted under the first rule that takes it out; others may take it out as well. The nearest is the one of those looked at that misses by least.",
      items: [
        ...fellOut.slice(0, NAMED).map((one) => fallenItem(one, terms.demand)),
        ...(more > 0
          ? [{ title: `${countOf(more, "more rule")}: see the JSON`, tone: "faint" as const, lines: [] }]
          : []),
      ],
    },
  ];
}
