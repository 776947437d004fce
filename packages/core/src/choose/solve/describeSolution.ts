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

/** Lays out what `solve` found: the sizes, what the aims come to, other solutions, and how the build then stands. */
export function describeSolution(solution: Solution): ReportDocument {
  const base = { title: solution.build, closing: [DISCLAIMER] };
  switch (solution.state) {
    case "missing":
      return {
        ...base,
        lead: [
          {
            text: `Not solved: the aims also need ${solution.missing.map(fieldLabel).join("; ")}.`,
            tone: "doubt",
          },
        ],
        sections: [],
      };
    case "aimless":
      return {
        ...base,
        lead: [
          { text: `Not solved: no aim rests on ${solution.idle.map(fieldLabel).join("; ")}.`, tone: "doubt" },
        ],
        sections: [],
      };
    case "conflict": {
      const { conflict, bySteps, aims, fields } = solution;
      const text = bySteps
        ? "No solution in these steps: smaller steps or wider allowances would do."
        : `No solution: these aims cannot be met together: ${namesOf(conflict, aims)}.`;
      return {
        ...base,
        lead: [{ text, tone: "bad" }],
        sections: [
          { heading: "Aims, with the sizes that come nearest", items: aims.map(aimItem) },
          { heading: "Sizes that come nearest", items: fields.map(fieldItem) },
        ],
      };
    }
    case "solved": {
      const { aims, fields, report } = solution;
      const { lead, sections, closing } = describeReport(report, "brief");
      return {
        title: solution.build,
        lead: [{ text: "Solved. The sizes below meet the aims at nominal values.", tone: "good" }, ...lead],
        sections: [
          { heading: "Sizes", items: fields.map(fieldItem) },
          { heading: "Aims", items: aims.map(aimItem) },
          ...familySection(solution),
          ...sections,
        ],
        closing,
      };
    }
  }
}
