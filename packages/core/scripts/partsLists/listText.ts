import { seeded } from "../../src/derive/seeded.ts";
import { findUnit } from "../../src/units/findUnit.ts";
import { parseMagnitude } from "../../src/units/parseMagnitude.ts";
import type { Design, DesignedList } from "./Design.ts";

const SEED = 94;

/** What was measured with the old parts in their places says nothing of new ones. */
const MEASURED_IN_PLACE = ["measuredClearance", "clearanceSpread", "endPlay", "endPlayUsed"];

/** The same ones of a list in every run, each once. */
function drawn<T>(all: readonly T[], count: number, name: string): readonly T[] {
  const order = all.map((one, index) => ({ one, by: seeded(SEED, name, index)() }));
  if (all.length < count) throw new Error(`${name}: ${all.length} designs, ${count} wanted`);
  const kept = new Set(
    [...order]
      .sort((a, b) => a.by - b.by)
      .slice(0, count)
      .map(({ one }) => one),
  );
  return all.filter((one) => kept.has(one));
}

const cellOf = (value: unknown) => (typeof value === "string" ? value : JSON.stringify(value));
const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** The unit that stands behind the number of a cell, before its words and tolerance. */
function unitOfCell(cell: string): string | undefined {
  const words = (parseMagnitude(cell)?.rest ?? "")
    .split(/\s*[±+]/)[0]!
    .trim()
    .split(" ");
  return words.map((_, index) => words.slice(0, words.length - index).join(" ")).find(findUnit);
}

/** The unit that all cells of a column have, or undefined. */
function commonUnit(cells: readonly string[]): string | undefined {
  const units = new Set(cells.map(unitOfCell));
  return units.size === 1 ? [...units][0] : undefined;
}

/** What a seller makes of a price, a wait and a stock. */
function offerOf({ price, wait }: Design, random: () => number) {
  const asked = price * (0.9 + 0.25 * random());
  const inStock = random() < 0.45;
  return {
    price: asked.toFixed(2),
    leadTime: inStock
      ? String(2 + Math.floor(3 * random()))
      : String(Math.ceil(wait * (0.6 + 0.6 * random()))),
    stock: inStock ? String(1 + Math.floor(6 * random())) : "0",
  };
}

/**
 * The text of one list.
 * @param own the part that the demo build has, as it is written there
 */
export function listText(
  { part, prefix, keep, offered, designs }: DesignedList,
  own: Readonly<Record<string, unknown>>,
): string {
  const base = Object.fromEntries(
    Object.entries(own).filter(([name]) => !keep.includes(name) && !MEASURED_IN_PLACE.includes(name)),
  );
  const parts = drawn(designs(own), offered, part);
  const rows = parts.map((design, index) => ({
    id: `${prefix}-${String(index + 1).padStart(3, "0")}`,
    design,
    fields: { ...base, ...design.fields } as Record<string, unknown>,
    offer: offerOf(design, seeded(SEED, `${part} offer`, index)),
  }));
  const names = [...new Set(rows.flatMap(({ fields }) => Object.keys(fields)))];
  const columns = names.map((name) => {
    const cells = rows.map(({ fields }) => (fields[name] === undefined ? "" : cellOf(fields[name])));
    const unit = commonUnit(cells);
    return {
      title: unit === undefined ? name : `${name} (${unit})`,
      cells: unit === undefined ? cells : cells.map((cell) => cell.replace(` ${unit}`, "")),
    };
  });
  const lines = rows.map(({ id, design, offer }, index) =>
    [id, design.name, offer.price, offer.leadTime, offer.stock, design.mass.toFixed(3)]
      .concat(columns.map(({ cells }) => cells[index]!))
      .map(quoted)
      .join(","),
  );
  const titles = ["id", "name", "price (EUR)", "leadTime (d)", "stock", "totalMass (kg)"];
  return [
    `# part: ${part}`,
    "# about: Invented, like the build that it is for. No such part, seller or price exists.",
    ...(keep.length === 0 ? [] : [`# keep: ${keep.join(", ")}`]),
    [...titles, ...columns.map(({ title }) => title)].join(","),
    ...lines,
    "",
  ].join("\n");
}
