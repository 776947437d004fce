import { positionKinds } from "../../read/FieldSpec.ts";
import { fields } from "../../read/fieldCatalog.ts";
import type { Cell, PaperGrid, PaperStep } from "../Paper.ts";
import type { PaperSource } from "../PaperSource.ts";
import { type Slot, slotsOf } from "../slotsOf.ts";
import { blank, blankOf } from "./pieces.ts";

/** As many columns as are wide enough to write in. */
const ACROSS = 8;

const rowName = ({ height, direction }: Slot) =>
  [height, direction].filter((word) => word !== undefined).join(", ");

/**
 * The places for the readings of a dimension that an engine has several times: positions across, heights and
 * directions down. Engines with more than eight positions take further rows.
 * @returns undefined for a dimension that an engine has once
 */
function readingGrid(source: PaperSource, path: string): PaperGrid | undefined {
  const spec = fields.get(path)?.spec;
  if (spec?.kind !== "dimension" || spec.per === undefined) return undefined;
  const slots = slotsOf(path, source.values);
  if (slots.length === 0) return undefined;
  const positions = [...new Set(slots.map(({ position }) => position!))];
  const names = [...new Set(slots.map(rowName))];
  const blocks = Array.from({ length: Math.ceil(positions.length / ACROSS) }, (_, index) =>
    positions.slice(index * ACROSS, (index + 1) * ACROSS),
  );
  const rows = blocks.flatMap((block) =>
    names.map((name) => ({
      name:
        [blocks.length > 1 ? `${block[0]} to ${block.at(-1)}` : "", name]
          .filter((word) => word !== "")
          .join(", ") || "reading",
      cells: block.map((position) => {
        const slot = slots.find((one) => one.position === position && rowName(one) === name)!;
        return [blankOf(source, slot)];
      }),
    })),
  );
  return {
    corner: positionKinds[spec.per],
    columns: blocks.length > 1 ? Array.from({ length: ACROSS }, (_, index) => `+${index}`) : positions,
    rows,
  };
}

/**
 * A step with places for the readings of a dimension: a grid where an engine has it several times, otherwise a blank
 * in a line.
 * @param lines what stands above the places
 * @param beside what is written beside them
 */
export function readingStep(
  source: PaperSource,
  path: string,
  step: Omit<PaperStep, "grid">,
  beside: { readonly single: Cell; readonly always: Cell } = { single: [], always: [] },
): PaperStep {
  const grid = readingGrid(source, path);
  const single = grid === undefined ? [blankOf(source, { path }), ...beside.single] : [];
  const written = [...single, ...beside.always];
  return {
    ...step,
    lines: written.length === 0 ? step.lines : [...step.lines, written],
    ...(grid === undefined ? {} : { grid }),
  };
}

/** Places for one reading of each piece of a part. */
export function pieceGrid(what: string, pieces: number): PaperGrid {
  const across = Math.min(pieces, ACROSS);
  return {
    corner: "piece",
    columns: Array.from({ length: across }, (_, index) =>
      pieces > ACROSS ? `+${index}` : String(index + 1),
    ),
    rows: Array.from({ length: Math.ceil(pieces / ACROSS) }, (_, row) => ({
      name: pieces > ACROSS ? `from ${row * ACROSS + 1}` : what,
      cells: Array.from({ length: Math.min(across, pieces - row * ACROSS) }, (__, index) => [
        blank(`${what}, no. ${row * ACROSS + index + 1}`),
      ]),
    })),
  };
}
