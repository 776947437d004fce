import { fieldLabel } from "../../read/fieldCatalog.ts";
import { DISCLAIMER } from "../../report/describeReport.ts";
import type { DocumentItem, DocumentLine, ReportDocument } from "../../report/ReportDocument.ts";
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

/** Lays out what `solve` found: the sizes, what the aims come to, other solutions, and how the build then stands. */
export function describeSolution(solution: Solution, { full = false }: SolutionStyle = {}): ReportDocument {
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
    case "conflict":
      return {
        ...base,
        lead: describeConflict(solution),
        sections: [
          { heading: "Aims, with the sizes that come nearest", items: solution.aims.map(describeAim) },
          {
            heading: "Sizes that come nearest",
            // Before they were put on steps they are one choice of many, and no number to go by.
            items: solution.fields.map((one) => fieldItem({ ...one, exact: one.value })),
          },
        ],
      };
    case "solved": {
      const { aims, fields, report } = solution;
      const { lead, sections, closing } = describeFound(report, full);
      return {
        title: solution.build,
        lead: [{ text: "Solved. The sizes below meet the aims at nominal values.", tone: "good" }, ...lead],
        sections: [
          { heading: "Sizes", items: fields.map(fieldItem) },
          { heading: "Aims", items: aims.map(describeAim) },
          ...describeOthers(solution),
          ...sections,
        ],
        closing,
      };
    }
  }
}
