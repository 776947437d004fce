import { type RuleFile, ruleFiles } from "@trialfit/rules";
import type { Departure } from "../judge/AppliedSet.ts";
import { countOf } from "../read/countOf.ts";
import type { Report } from "./Report.ts";
import type { DocumentItem, DocumentLine, DocumentSection } from "./ReportDocument.ts";

/** With which set a build was judged, where one was named. */
export function setLine({ set }: Report): readonly DocumentLine[] {
  if (set === undefined) return [];
  const { title, id, use, silenced, departures } = set;
  const changed = departures.filter(({ kind }) => kind === "limit").length;
  const own = departures.filter(({ kind }) => kind === "rule").length;
  const parts = [
    ...(use === undefined ? [] : [`judged for the use ${use}`]),
    ...(changed === 0 ? [] : [`${countOf(changed, "limit")} of its own`]),
    ...(own === 0 ? [] : [`${countOf(own, "rule")} of its own`]),
    ...(silenced.length === 0 ? [] : [`${countOf(silenced.length, "rule")} silenced: see "Departures"`]),
  ];
  const tone = silenced.length > 0 ? "doubt" : "plain";
  return [{ text: `set: ${title} [${id}]${parts.length === 0 ? "" : `; ${parts.join("; ")}`}`, tone }];
}

/**
 * One departure in the words of its authors.
 * @param would what a silenced rule would have said, where a build was judged
 */
export function departureItem(
  departure: Departure,
  would: NonNullable<Report["set"]>["silenced"][number] | undefined,
  titleOf: (rule: string) => string,
): DocumentItem {
  switch (departure.kind) {
    case "use":
      return {
        title: `judged for the use ${departure.use}, whatever the build states`,
        id: departure.set,
        tone: "plain",
        lines: [],
      };
    case "rule":
      return {
        title: `a rule of its own: ${titleOf(departure.rule)}`,
        id: departure.rule,
        tone: "plain",
        lines: [],
      };
    case "limit": {
      const { from, to, when, outsideRange, because, by, rule, limit } = departure;
      return {
        title: `another limit: ${titleOf(rule)}`,
        id: rule,
        tone: outsideRange ? "doubt" : "plain",
        lines: [
          { label: limit, text: `${from} → ${to}${when === undefined ? "" : ` where ${when}`}` },
          ...(outsideRange
            ? [
                {
                  label: "beware",
                  text: "outside the range that the catalog knows in the trade",
                  tone: "bad" as const,
                },
              ]
            : []),
          { label: "because", text: `${because} (${by})` },
        ],
      };
    }
    case "silence": {
      return {
        title: `silenced: ${titleOf(departure.rule)}`,
        id: departure.rule,
        tone: "doubt",
        lines: [
          ...(would === undefined
            ? []
            : [
                {
                  label: "would say",
                  text: `${would.verdict}; weight: ${would.weight}`,
                  tone: "doubt" as const,
                },
              ]),
          { label: "because", text: `${departure.because} (${departure.by})` },
        ],
      };
    }
  }
}

/** Every way in which the set departs from the whole catalog. */
export function departureSection(report: Report): DocumentSection {
  const departures = report.set?.departures ?? [];
  const titles = new Map<string, string>([
    ...ruleFiles.map(({ id, title }: RuleFile) => [id, title] as const),
    ...report.verdicts.map(({ rule, title }) => [rule, title] as const),
  ]);
  return {
    heading: `Departures of the set from the whole catalog (${departures.length})`,
    intro: "A silenced rule has not passed: it was judged, and the shop does not count it.",
    items: departures.map((one) =>
      departureItem(
        one,
        one.kind === "silence" ? report.set?.silenced.find(({ rule }) => rule === one.rule) : undefined,
        (rule) => titles.get(rule) ?? rule,
      ),
    ),
  };
}
