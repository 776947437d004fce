import { standings } from "@trialfit/rules";
import { countOf } from "../read/countOf.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { bandOrigins } from "../tables/bandOrigins.ts";
import { confirmationLines } from "./confirmationLines.ts";
import { describeRelevance } from "./describeComparison.ts";
import { assumedLine, requirements } from "./describeFinding.ts";
import { doubtfulRelevance } from "./doubtfulRelevance.ts";
import type { Report } from "./Report.ts";
import type { DocumentItem, DocumentSection } from "./ReportDocument.ts";

/** Rules that hold, with what there is to spare. */
export function heldSection(report: Report): DocumentSection {
  const held = report.verdicts.filter((verdict) => verdict.verdict === "holds");
  return {
    heading: `Holds (${held.length})`,
    items: held.map((verdict) => ({
      title: verdict.title,
      id: verdict.rule,
      tone: "good",
      lines: [
        ...[...requirements(verdict), ...confirmationLines(verdict)].map(({ bar: _, ...line }) => ({
          ...line,
          tone: "faint" as const,
        })),
        ...doubtfulRelevance(verdict).map((one) => ({
          label: "if meant",
          text: `not known whether it is meant for this build: ${describeRelevance(one)}`,
          tone: "doubt" as const,
        })),
        ...assumedLine(verdict),
      ],
    })),
  };
}

/** Rules that are not relevant, with what makes them so. */
export function skippedSection(report: Report): DocumentSection {
  const skipped = report.verdicts.filter((verdict) => verdict.verdict === "not-applicable");
  return {
    heading: `Not applicable (${skipped.length})`,
    items: skipped.map((verdict) => ({
      title: verdict.title,
      id: verdict.rule,
      tone: "faint",
      lines: [
        ...verdict.comparisons
          .filter((one) => one.in === "when" && one.state === "no")
          .map((one) => ({ text: describeRelevance(one), tone: "faint" as const })),
        ...assumedLine(verdict),
      ],
    })),
  };
}

/** Bands that the build does not state, by where they come from, with how well founded that is. */
function suppliedBands(report: Report): readonly DocumentItem[] {
  const given = report.fields.filter(({ path }) => !report.assumptions.some((one) => one.path === path));
  return Object.entries(bandOrigins).flatMap(([origin, { taken, standing }]) => {
    const fields = given.filter(({ toleranceFrom }) => toleranceFrom === origin);
    if (standing === undefined || fields.length === 0) return [];
    return [
      {
        title: `for ${countOf(fields.length, "value")} without a stated tolerance ${taken} (${standings[standing]})`,
        tone: "doubt",
        lines: [{ text: fields.map((field) => `${field.label} ${field.text}`).join("; ") }],
      },
    ];
  });
}

/** What was taken because the build does not say it. */
export function assumptionSection(report: Report): DocumentSection {
  const reasons = new Set(report.assumptions.map(({ because }) => because));
  const items = [...reasons].map((reason): DocumentItem => {
    const taken = report.assumptions.filter(({ because }) => because === reason);
    return {
      title: taken.map(({ path, text }) => `${fieldLabel(path)}: ${text}`).join("; "),
      tone: "doubt",
      lines: [{ text: reason }],
    };
  });
  const estimates = report.fields.filter(
    (field) => field.provenance === "assumed" && !report.assumptions.some((one) => one.path === field.path),
  );
  if (estimates.length > 0) {
    items.push({
      title: estimates.map((field) => `${field.label}: ${field.text}`).join("; "),
      tone: "doubt",
      lines: [
        {
          text: "entered as an estimate; say `provenance: measured` and the instrument where it was measured",
        },
      ],
    });
  }
  items.push(...suppliedBands(report));
  return { heading: "Assumed", items };
}
