import { fieldLabel } from "../../read/fieldCatalog.ts";
import type { Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { operatedFields } from "../tables/operatedFields.ts";
import { cautionsOf, limitCell, numberComparisons, relevant, roomCell, valueCell, words } from "./pieces.ts";

function settings(source: PaperSource): readonly PaperSection[] {
  const paths = operatedFields.filter((path) => source.values.has(path));
  if (paths.length === 0) return [];
  return [
    {
      heading: "What may be set",
      intro: "Outside the room the check that is named no longer holds over the tolerances of the parts.",
      body: {
        kind: "table",
        columns: ["Setting or reading", "Planned", "Room, and the rule that sets it"],
        widths: [6, 4, 10],
        rows: paths.map((path) => [[fieldLabel(path)], source.print.field(path), roomCell(source, path)]),
      },
    },
  ];
}

/** Limits of rules that ask to operate with care, or that belong to running. */
function limits(source: PaperSource): readonly PaperSection[] {
  const own = relevant(source).filter(({ rule, work, confirm }) => {
    const stages = source.rules.get(rule)?.file.stages ?? [];
    return confirm === undefined && (work === "operate" || stages.includes("run"));
  });
  const rows = own.flatMap((verdict) =>
    numberComparisons(verdict).map((one) => [
      [one.label],
      valueCell(source, one),
      limitCell(source, verdict.rule, one),
      [verdict.title],
      words(verdict.verdict === "holds" ? undefined : (verdict.remedy ?? verdict.verdict)),
    ]),
  );
  if (rows.length === 0) return [];
  return [
    {
      heading: "Limits, and the rule that sets each",
      cautions: cautionsOf(own),
      body: {
        kind: "table",
        columns: ["What", "Value", "Limit", "Rule", "If it is passed"],
        widths: [4, 4, 3, 4, 5],
        rows,
      },
    },
  ];
}

/** What the owner keeps to. */
export function limitsCard(source: PaperSource): Paper | undefined {
  const sections = [...settings(source), ...limits(source)];
  if (sections.length === 0) return undefined;
  return {
    id: "limits-card",
    title: "Operating limits",
    purpose:
      "Speeds, pressures, temperatures and times to keep to, each with the rule that sets it. A limit that was passed is written into the service log and told to the shop.",
    sections,
    signatures: ["Handed over to, and when"],
  };
}
