import { parts } from "../read/buildSchema.ts";
import { positionKinds } from "../read/FieldSpec.ts";
import type { Report, ReportExchange } from "./Report.ts";
import type { DocumentItem, DocumentSection } from "./ReportDocument.ts";

function describeExchange({ part, per, moves, betters }: ReportExchange): DocumentItem {
  const label = parts.find(({ spec }) => spec.key === part)?.spec.label ?? part;
  const kind = positionKinds[per];
  return {
    title: `${label}: ${moves.map(({ from, to }) => `that of ${kind} ${from} to ${kind} ${to}`).join(", ")}`,
    tone: "good",
    lines: [
      ...betters.map(({ rule, before, after }) => ({
        label: "betters",
        text: `[${rule}] from ${before} to ${after} at its worst place`,
      })),
      {
        label: "do",
        text: "Mark every part with its new place before it leaves the bench, and measure again there. What was matched or balanced as a set goes with it.",
      },
    ],
  };
}

/** Parts that were measured one by one and would stand better in other places. */
export function exchangeSection({ exchanges }: Report): DocumentSection {
  return {
    heading: `Parts to exchange (${exchanges.length})`,
    intro: "The measured parts as they lie go together better in other places; nothing gets worse by it.",
    items: exchanges.map(describeExchange),
  };
}
