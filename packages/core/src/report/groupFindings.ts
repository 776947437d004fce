import type { Report, ReportVerdict } from "./Report.ts";

/** What a builder must do, in the order in which it must be done. */
export const findingGroups = {
  stop: "Stop: do not order or assemble until this is settled",
  contradiction: "Contradictory: these inputs do not go together",
  order: "Order",
  machine: "Machine",
  measure: "Measure",
  assemble: "Assemble with care",
  operate: "Operate within limits",
  confirm: "To be confirmed by a person",
  unknown: "Not judged: inputs are missing",
} as const;
export type FindingGroup = keyof typeof findingGroups;

const WEIGHT_ORDER = ["stop", "caution", "note"];

/** The group of a verdict that asks something, or undefined when it asks nothing. */
export function groupOf(verdict: ReportVerdict): FindingGroup | undefined {
  switch (verdict.verdict) {
    case "fails":
      return verdict.weight === "stop" ? "stop" : verdict.work;
    case "open":
      return "measure";
    case "unknown":
      if (verdict.toConfirm) return "confirm";
      return verdict.reasons.length > 0 ? "contradiction" : "unknown";
    default:
      return undefined;
  }
}

/** Every finding of a report by group, heaviest first. */
export function groupFindings(report: Report): ReadonlyMap<FindingGroup, readonly ReportVerdict[]> {
  const groups = new Map<FindingGroup, ReportVerdict[]>();
  for (const group of Object.keys(findingGroups) as FindingGroup[]) groups.set(group, []);
  for (const verdict of report.verdicts) {
    const group = groupOf(verdict);
    if (group !== undefined) groups.get(group)!.push(verdict);
  }
  for (const verdicts of groups.values()) {
    verdicts.sort((a, b) => WEIGHT_ORDER.indexOf(a.weight) - WEIGHT_ORDER.indexOf(b.weight));
  }
  return groups;
}
