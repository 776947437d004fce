import { fieldLabel } from "../../read/fieldCatalog.ts";
import { DISCLAIMER } from "../../report/describeReport.ts";
import type {
  DocumentItem,
  DocumentLine,
  DocumentSection,
  ReportDocument,
} from "../../report/ReportDocument.ts";
import { fromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { describeAim } from "./describeAim.ts";
import { describeConflict } from "./describeConflict.ts";
import { describeFound } from "./describeFound.ts";
import { describeOthers } from "./describeOthers.ts";
import type { Solution, SolvedField } from "./Solution.ts";

/** Digits of the size that the aims give before it is put on a step. */
const DIGITS = 7;

function fieldItem({ label, path, text, exact, value, unit }: SolvedField): DocumentItem {
  const digitsOf = (size: number) => String(Number(fromSi(size, unitOf(unit)).toPrecision(DIGITS)));
  const digits = digitsOf(exact);
  const lines: readonly DocumentLine[] = [
    { label: "is", text },
    ...(digits !== digitsOf(value)
      ? [{ label: "exactly", text: `${digits} ${unit}`, tone: "faint" as const }]
      : []),
  ];
  return { title: label, id: path, tone: "plain", lines };
}

export interface SolutionStyle {
  /** Everything that the report on the build found has; otherwise only what fails, is open or contradicts, the rest counted. */
  readonly full?: boolean;
}

/** What was found, part by part: a document has them one after the other. */
export interface SolutionParts {
  readonly lead: readonly DocumentLine[];
  readonly sections: readonly (DocumentSection & { readonly of: "sizes" | "aims" | "ranges" | "others" })[];
  /** How the build then stands. */
  readonly report?: ReportDocument;
}

const unsolved = (text: string): SolutionParts => ({
  lead: [{ text: `Not solved: ${text}.`, tone: "doubt" }],
  sections: [],
});

/** What `solve` found in words: the sizes, what the aims come to, other solutions, and how the build then stands. */
export function solutionParts(solution: Solution, { full = false }: SolutionStyle = {}): SolutionParts {
  switch (solution.state) {
    case "missing":
      return unsolved(`the aims also need ${solution.missing.map(fieldLabel).join("; ")}`);
    case "aimless":
      return unsolved(`no aim rests on ${solution.idle.map(fieldLabel).join("; ")}`);
    case "conflict": {
      const { aims, fields } = solution;
      return {
        lead: describeConflict(solution),
        sections: [
          { of: "aims", heading: "Aims, with the sizes that come nearest", items: aims.map(describeAim) },
          {
            of: "sizes",
            heading: "Sizes that come nearest",
            // Before they were put on steps they are one choice of many, and no number to go by.
            items: fields.map((one) => fieldItem({ ...one, exact: one.value })),
          },
        ],
      };
    }
    case "solved": {
      const { aims, fields, report } = solution;
      return {
        lead: [{ text: "Solved. The sizes below meet the aims at nominal values.", tone: "good" }],
        sections: [
          { of: "sizes", heading: "Sizes", items: fields.map(fieldItem) },
          { of: "aims", heading: "Aims", items: aims.map(describeAim) },
          ...describeOthers(solution),
        ],
        report: describeFound(report, full),
      };
    }
  }
}

/** Lays out what `solve` found. */
export function describeSolution(solution: Solution, style: SolutionStyle = {}): ReportDocument {
  const { lead, sections, report } = solutionParts(solution, style);
  return {
    title: solution.build,
    lead: [...lead, ...(report?.lead ?? [])],
    sections: [...sections.map(({ of: _, ...section }) => section), ...(report?.sections ?? [])],
    closing: report?.closing ?? [DISCLAIMER],
  };
}
