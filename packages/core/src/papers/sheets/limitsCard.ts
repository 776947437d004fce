import { fieldLabel } from "../../read/fieldCatalog.ts";
import type { Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { operatedFields } from "../tables/operatedFields.ts";
import {
  cautionsOf,
  isOfStage,
  limitCell,
  numberComparisons,
  relevant,
  roomCell,
  tableSection,
  valueCell,
  words,
} from "./pieces.ts";

function settings(source: PaperSource): readonly PaperSection[] {
  const paths = operatedFields.filter((path) => source.values.has(path));
  return tableSection({
    heading: "What may be set",
    intro: "Outside the room the check that is named no longer holds over the tolerances of the parts.",
    columns: ["Setting or reading", "Planned", "Room, and the rule that sets it"],
    widths: [6, 4, 10],
    rows: paths.map((path) => [[fieldLabel(path)], source.print.field(path), roomCell(source, path)]),
  });
}

/** Limits of rules that ask to operate with care, or that belong to running. */
function limits(source: PaperSource): readonly PaperSection[] {
  const own = relevant(source).filter(
    (verdict) =>
      verdict.confirm === undefined && (verdict.work === "operate" || isOfStage(source, verdict, "run")),
  );
  const rows = own.flatMap((verdict) =>
    numberComparisons(verdict).map((one) => [
      [one.label],
      valueCell(source, one),
      limitCell(source, verdict.rule, one),
      [verdict.title],
      words(verdict.verdict === "holds" ? undefined : (verdict.remedy ?? verdict.verdict)),
    ]),
  );
  return tableSection({
    heading: "Limits, and the rule that sets each",
    cautions: cautionsOf(own),
    columns: ["What", "Value", "Limit", "Rule", "If it is passed"],
    widths: [4, 4, 3, 4, 5],
    rows,
  });
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
