import type { FieldSchema } from "../../read/fieldSchema.ts";
import { count, dimension, text } from "../../read/fields.ts";

/** Longest name of a part. */
export const MAX_NAME = 200;

/** Letters, digits and `. _ -`, beginning with a letter or digit: an id is typed, and stands in file names. */
export const PART_ID = /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/;

/** ISO 4217 gives every currency three capital letters. */
export const CURRENCY = /^[A-Z]{3}$/;

/** Columns that a list has beside the fields of its part and are read like them. `id` and `price` are read apart. */
export const measuredColumns: Readonly<Record<"leadTime" | "stock" | "totalMass", FieldSchema>> = {
  leadTime: dimension({
    label: "Lead time",
    symbol: "t_L",
    unit: "d",
    help: "From the order until the part is there, in days of the calendar.",
    range: ["0 d", "2000 d"],
    exact: "a date is promised, not a span",
  }),
  stock: count({
    label: "Stock",
    symbol: "n_S",
    help: "For how many engines the seller has it now.",
    least: 0,
    most: 1_000_000,
  }),
  totalMass: dimension({
    label: "Total mass",
    symbol: "m_T",
    unit: "kg",
    help: "Mass of all of it that one engine takes: of a set of pistons, the whole set.",
    range: ["0 kg", "2000 kg"],
    exact: "parts are compared by it, no rule reads it",
  }),
};

const wordColumns: Readonly<Record<string, FieldSchema>> = {
  name: text({ label: "Name", help: "What people call the part." }),
};

/** Names of all columns that a list has beside the fields of its part. */
export const listColumns: readonly string[] = [
  "id",
  "price",
  ...Object.keys(measuredColumns),
  ...Object.keys(wordColumns),
];
