import type { SetFile } from "@trialfit/rules";
import { DISCLAIMER } from "../report/describeReport.ts";
import { departureItem } from "../report/describeSet.ts";
import type { DocumentLine, ReportDocument } from "../report/ReportDocument.ts";
import { applySet } from "./applySet.ts";

/** A set explained: for whom it is, what it extends, what it changes, and on whose word. */
export function explainSet(set: SetFile, others: readonly SetFile[] = []): ReportDocument {
  const { chain, departures, rules } = applySet([...others, set]);
  const lines: readonly DocumentLine[] = [
    { label: "is", text: set.about },
    {
      label: "begins",
      text:
        chain.length === 1
          ? "with the whole catalog"
          : chain
              .slice(0, -1)
              .map(({ title, id }) => `${title} [${id}]`)
              .join(", then "),
    },
    { label: "rules", text: String(rules.length) },
  ];
  const titles = new Map(rules.map((rule) => [rule.id, rule.title]));
  const items = departures.map((one) => departureItem(one, undefined, (rule) => titles.get(rule) ?? rule));
  return {
    title: set.title,
    lead: [],
    sections: [
      { heading: "Set", items: [{ title: set.title, id: set.id, tone: "plain", lines }] },
      ...(items.length === 0
        ? []
        : [{ heading: `Departures from the whole catalog (${items.length})`, items }]),
    ],
    closing: [DISCLAIMER],
  };
}
