import type { PartSpec } from "../../read/FieldSpec.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { mostWanted } from "../../report/mostWanted.ts";
import { isReleased, orderGate, orderPass } from "../gates.ts";
import type { Cell, Gate, Paper, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { boughtParts, givenFields, ownLabel, partKeyOf } from "../partsOf.ts";
import { piecesOf } from "../tables/partPieces.ts";
import { blank, gateCell, namedFields, relevant, tableSection, words } from "./pieces.ts";

/** Fields of the part that verdicts lack, or that were taken for granted: the seller knows them. */
function askFor(source: PaperSource, part: string): string {
  const lacking = mostWanted(source.report.verdicts).map(({ path }) => path);
  const assumed = source.report.assumptions.map(({ path }) => path);
  const own = [...new Set([...lacking, ...assumed])].filter(
    (path) => partKeyOf(path) === part && fields.has(path),
  );
  return own.map(ownLabel).join("; ");
}

/** Findings that ordering this part answers. */
function answers(source: PaperSource, id: string): string {
  return relevant(source)
    .filter(({ verdict, work, parts }) => verdict === "fails" && work === "order" && parts.includes(id))
    .map(({ title, remedy }) => (remedy === undefined ? title : `${title}: ${remedy}`))
    .join("; ");
}

/** One part to order. */
export interface OrderLine {
  readonly part: PartSpec;
  readonly pieces: number | undefined;
  /** Its sizes and words. */
  readonly specification: Cell;
  readonly ask: string;
  readonly answers: string;
  readonly gate: Gate;
}

/** A part of which something was measured lies on the bench. */
const inHand = ({ build }: PaperSource, part: string): boolean =>
  [...build.values].some(
    ([path, value]) =>
      partKeyOf(path) === part && value.kind === "dimension" && value.provenance === "measured",
  );

/** Every part that is bought and not in hand, with what its order waits for. */
export function orderLines(source: PaperSource): readonly OrderLine[] {
  return boughtParts
    .filter(({ key }) => !inHand(source, key))
    .map((part) => ({
      part,
      pieces: piecesOf(part.key, source.values),
      specification: namedFields(source, givenFields(source, part.key)),
      ask: askFor(source, part.key),
      answers: answers(source, part.id),
      gate: orderGate(part, source),
    }))
    .filter((line) => line.specification.length > 0 || line.ask !== "" || line.answers !== "");
}

function step({ part, pieces, specification: sizes, ask, answers: finding, gate }: OrderLine): PaperStep {
  const lines: readonly Cell[] = [
    ["Pieces: ", ...(pieces === undefined ? [blank("pieces")] : [String(pieces)])],
    ["Size, material, coating: ", ...(sizes.length === 0 ? words(undefined) : sizes)],
    ...(ask === "" ? [] : [[`Ask the seller for: ${ask}`]]),
    ...(finding === "" ? [] : [[`Answers: ${finding}`]]),
    gateCell(gate),
    [blank("price"), blank("lead time"), blank("from", undefined, true), blank("ordered on")],
  ];
  return { title: part.label, hold: !isReleased(gate), lines };
}

/** What is bought, in which size, and what each order waits for. */
export function orderList(source: PaperSource): Paper | undefined {
  const lines = orderLines(source);
  const here = boughtParts.filter(({ key }) => inHand(source, key));
  if (lines.length === 0) return undefined;
  const held = lines.filter(({ gate }) => !isReleased(gate)).length;
  return {
    id: "order-list",
    title: "Order list",
    purpose:
      "What to order, in which size, and what each order waits for. A line that is HELD is not ordered.",
    lines: lines.map(({ part, gate }) => ({ pass: orderPass(part), label: part.label, gate })),
    sections: [
      {
        heading: `Parts: ${lines.length - held} released, ${held} held`,
        body: { kind: "steps", ordered: false, steps: lines.map(step) },
      },
      ...tableSection({
        heading: "In hand: something of them was measured",
        columns: ["Part", "Still to ask or to measure"],
        widths: [5, 15],
        rows: here.map(({ key, label }) => [[label], words(askFor(source, key))]),
      }),
    ],
    signatures: ["Ordered by, and when"],
  };
}
