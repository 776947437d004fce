import { fields } from "../../read/fieldCatalog.ts";
import { finalGate } from "../gates.ts";
import type { Cell, Paper, PaperSection } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { boughtParts, givenFields } from "../partsOf.ts";
import { piecesOf } from "../tables/partPieces.ts";
import { pieceGrid } from "./gridOf.ts";
import {
  blank,
  cautionsOf,
  checkRows,
  isOfStage,
  namedFields,
  onParts,
  relevant,
  tableSection,
} from "./pieces.ts";

/** Shares of the final torque at which fasteners are drawn down, where their maker gives no steps. Common practice. */
const STEPS = [0.3, 0.6, 1];
/** Rules that are looked at while fasteners are tightened for good. */
const tightenedBy = (source: PaperSource) =>
  relevant(source).filter(
    (verdict) => verdict.work === "assemble" && isOfStage(source, verdict, "final-assembly"),
  );

const isTightened = (part: string) => fields.has(`${part}.torque`);

function steps(source: PaperSource, part: string): Cell {
  const torque = source.values.get(`${part}.torque`);
  if (torque?.kind !== "dimension") return ["To the sheet of the fastener's maker: no torque is stated."];
  return STEPS.flatMap((share, index): Cell => {
    const size = source.print.number(`${part}.torque × ${share}`, share * torque.nominal, torque.unit, 0);
    return [index === 0 ? "" : ", then ", size];
  });
}

function sectionsOf(
  source: PaperSource,
  { key, id, label }: { key: string; id: string; label: string },
): readonly PaperSection[] {
  const given = givenFields(source, key);
  if (given.length === 0) return [];
  const pieces = piecesOf(key, source.values);
  const judged = relevant(source).filter(({ confirm }) => confirm === undefined);
  return [
    {
      heading: pieces === undefined ? label : `${label}, ${pieces} pieces`,
      intro:
        "The torque is worth nothing with another lubricant: the friction stated here is that of this lubricant, on thread and under the head.",
      cautions: cautionsOf(onParts(source, [id], tightenedBy(source))),
      body: {
        kind: "steps",
        ordered: false,
        steps: [
          {
            title: "Tighten",
            hold: true,
            lines: [
              ["Steps, in the maker's order: ", ...steps(source, key)],
              ["As planned: ", ...namedFields(source, given)],
              [
                blank("lubricant, thread and head", undefined, true),
                blank("wrench, calibrated on"),
                blank("by, on"),
              ],
            ],
            grid: pieceGrid("reading", pieces ?? 1),
          },
        ],
      },
    },
    ...tableSection({
      heading: `${label}: what it is held to`,
      columns: ["Check", "Value", "Limit", "Stands"],
      widths: [9, 5, 4, 2],
      rows: checkRows(source, onParts(source, [id], judged)),
    }),
  ];
}

/** How each fastener is tightened, with a place for each reading. */
export function torqueSheet(source: PaperSource): Paper | undefined {
  const sections = boughtParts
    .filter(({ key }) => isTightened(key))
    .flatMap((part) => sectionsOf(source, part));
  if (sections.length === 0) return undefined;
  return {
    id: "torque-sheet",
    title: "Torque and stretch sheet",
    purpose:
      "Lubricant, steps, final value, method and window of every fastener, with a reading and a signature for each.",
    gate: finalGate(source, "torque-sheet"),
    sections,
    signatures: ["Tightened by", "Seen by"],
  };
}
