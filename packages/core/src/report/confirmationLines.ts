import type { RuleFile } from "@trialfit/rules";
import type { ReportVerdict } from "./Report.ts";
import type { DocumentLine } from "./ReportDocument.ts";

/** What to look at, when, and what it looks like when it is not right. */
export function confirmLines({
  check,
  moment,
  failure,
}: NonNullable<RuleFile["confirm"]>): readonly DocumentLine[] {
  return [
    { label: "look", text: check },
    { label: "when", text: moment },
    { label: "not right", text: failure },
  ];
}

/** What a person wrote down of what was seen, or nothing. */
export function confirmationLines({ confirmed }: ReportVerdict): readonly DocumentLine[] {
  if (confirmed === undefined) return [];
  const { seen, by, on, how } = confirmed;
  return [
    {
      label: "seen",
      text: `${seen === "yes" ? "as it must be" : "not as it must be"}, by ${by} on ${on}: ${how}`,
      tone: seen === "yes" ? "good" : "bad",
    },
  ];
}
