import { fieldLabel } from "../../read/fieldCatalog.ts";
import { DISCLAIMER, describeReport } from "../../report/describeReport.ts";
import type {
  DocumentItem,
  DocumentLine,
  DocumentSection,
  ReportDocument,
} from "../../report/ReportDocument.ts";
import { fromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import type { Solution, SolvedAim, SolvedField } from "./Solution.ts";

const kindWords = { equal: "", least: "at least ", most: "at most " } as const;

function aimItem({ name, id, kind, wanted, reached, met, unit, decimals }: SolvedAim): DocumentItem {
  const print = (value: number) => formatNumber(value, unit, { decimals });
  const text = `${kindWords[kind]}${print(wanted)} wanted; ${reached === undefined ? "no value: the sizes contradict each other" : `${print(reached)} reached`}`;
  return { title: name, id, tone: met ? "good" : "bad", lines: [{ label: met ? "met" : "not met", text }] };
}

function fieldItem({ label, path, text, exact, value, unit }: SolvedField): DocumentItem {
  const off = Math.abs(exact - value) > 1e-9 * Math.max(Math.abs(exact), Math.abs(value));
  const digits = String(Number(fromSi(exact, unitOf(unit)).toPrecision(7)));
  const lines: readonly DocumentLine[] = [
    { label: "is", text },
    ...(off ? [{ label: "exactly", text: `${digits} ${unit}`, tone: "faint" as const }] : []),
  ];
  return { title: label, id: path, tone: "plain", lines };
}

function familySection(solution: Extract<Solution, { state: "solved" }>): readonly DocumentSection[] {
  const { family } = solution;
  if (family === undefined) return [];
  const [lead, ...others] = family.moves;
  const moves = others.map(
    ({ label, change }) => `${label} ${change >= 0 ? "+" : "−"}${Math.abs(change).toPrecision(4)}`,
  );
  return [
    {
      heading: "Other solutions",
      intro:
        family.freedom > 1
          ? `${family.freedom} of the dimensions may be chosen freely. State more aims, or choose: some that lie along ${lead!.label}.`
          : `For each 1 more of ${lead!.label}: ${moves.length === 0 ? "nothing else moves" : moves.join("; ")} (in one unit for all lengths).`,
      items: family.members.map((member) => ({
        title: member.map(({ text }) => text).join(", "),
        tone: "plain",
        lines: member.map(({ label, text }) => ({ label, text })),
      })),
    },
  ];
}

function namesOf(ids: readonly string[], aims: readonly SolvedAim[]): string {
  return ids.map((id) => aims.find((one) => one.id === id)?.name ?? id).join(", ");
}

/** What was found, part by part: a document has them one after the other. */
export interface SolutionParts {
  readonly lead: DocumentLine;
  readonly sections: readonly (DocumentSection & { readonly of: "sizes" | "aims" | "others" })[];
  /** How the build then stands. */
  readonly report?: ReportDocument;
}

const unsolved = (text: string): SolutionParts => ({
  lead: { text: `Not solved: ${text}.`, tone: "doubt" },
  sections: [],
});

/** What `solve` found in words: the sizes, what the aims come to, other solutions, and how the build then stands. */
export function solutionParts(solution: Solution): SolutionParts {
  switch (solution.state) {
    case "missing":
      return unsolved(`the aims also need ${solution.missing.map(fieldLabel).join("; ")}`);
    case "aimless":
      return unsolved(`no aim rests on ${solution.idle.map(fieldLabel).join("; ")}`);
    case "conflict": {
      const { conflict, bySteps, aims, fields } = solution;
      const text = bySteps
        ? "No solution in these steps: smaller steps or wider allowances would do."
        : `No solution: these aims cannot be met together: ${namesOf(conflict, aims)}.`;
      return {
        lead: { text, tone: "bad" },
        sections: [
          { of: "aims", heading: "Aims, with the sizes that come nearest", items: aims.map(aimItem) },
          { of: "sizes", heading: "Sizes that come nearest", items: fields.map(fieldItem) },
        ],
      };
    }
    case "solved": {
      const { aims, fields, report } = solution;
      return {
        lead: { text: "Solved. The sizes below meet the aims at nominal values.", tone: "good" },
        sections: [
          { of: "sizes", heading: "Sizes", items: fields.map(fieldItem) },
          { of: "aims", heading: "Aims", items: aims.map(aimItem) },
          ...familySection(solution).map((section) => ({ of: "others" as const, ...section })),
        ],
        report: describeReport(report, "brief"),
      };
    }
  }
}

/** Lays out what `solve` found. */
export function describeSolution(solution: Solution): ReportDocument {
  const { lead, sections, report } = solutionParts(solution);
  return {
    title: solution.build,
    lead: [lead, ...(report?.lead ?? [])],
    sections: [...sections.map(({ of: _, ...section }) => section), ...(report?.sections ?? [])],
    closing: report?.closing ?? [DISCLAIMER],
  };
}
