import { fields } from "../../read/fieldCatalog.ts";
import type { Cell, Paper, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { boughtParts, givenFields, ownLabel } from "../partsOf.ts";
import { piecesOf } from "../tables/partPieces.ts";
import { blank, rulesOn, tick } from "./pieces.ts";

/** Sizes of a part that are worth the time at the door: those that most rules rest on. */
const AT_THE_DOOR = 6;
/** Units of what can be gauged or weighed at the door. */
const gauged: ReadonlySet<string> = new Set(["mm", "um", "cm3", "kg", "g"]);

function worthMeasuring(source: PaperSource, part: string): readonly string[] {
  return givenFields(source, part)
    .filter((path) => {
      const spec = fields.get(path)?.spec;
      const value = source.values.get(path);
      return (
        spec?.kind === "dimension" &&
        gauged.has(spec.unit) &&
        value?.kind === "dimension" &&
        value.provenance !== "measured"
      );
    })
    .map((path) => ({ path, rules: rulesOn(source, path) }))
    .filter(({ rules: count }) => count > 0)
    .sort((a, b) => b.rules - a.rules)
    .slice(0, AT_THE_DOOR)
    .map(({ path }) => path);
}

/** Pieces that are measured at the door: all, or a sample of many alike. */
const SAMPLE = 8;

function receive(source: PaperSource, part: { key: string; label: string }): readonly PaperStep[] {
  const paths = worthMeasuring(source, part.key);
  if (paths.length === 0) return [];
  const pieces = piecesOf(part.key, source.values) ?? 1;
  const across = Math.min(pieces, SAMPLE);
  const sampled = pieces > SAMPLE ? `; ${SAMPLE} of them, as they come` : "";
  const step: PaperStep = {
    title: pieces > 1 ? `${part.label}, ${pieces} pieces${sampled}` : part.label,
    lines: [
      ...paths.map((path): Cell => [`${ownLabel(path)}: ordered `, ...source.print.field(path)]),
      [
        tick("accepted"),
        " accepted  ",
        tick("returned"),
        " returned  ",
        blank("marks, damage, rust, coating", undefined, true),
      ],
    ],
    grid: {
      corner: "size as delivered",
      columns: Array.from({ length: across }, (_, index) => String(index + 1)),
      rows: paths.map((path) => ({
        name: ownLabel(path),
        cells: Array.from(
          { length: across },
          (_, index): Cell => [blank(`${ownLabel(path)}, piece ${index + 1}`)],
        ),
      })),
    },
  };
  return [step];
}

/** What to look at while the parts can still go back. */
export function receivingSheet(source: PaperSource): Paper | undefined {
  const steps = boughtParts.flatMap((part) => receive(source, part));
  if (steps.length === 0) return undefined;
  return {
    id: "receiving-sheet",
    title: "Receiving sheet",
    purpose: "The few sizes of each part to measure at the door, while it can still go back.",
    sections: [{ heading: "Parts", body: { kind: "steps", ordered: false, steps } }],
    signatures: ["Received by, and when"],
  };
}
