import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { recalledTables } from "./recalledTables.ts";

/** Files that pass recalled values on, or speak of them, and hold none. */
const HOLD_NONE = ["bandOrigins", "byMaterial", "usualMetals"];

describe("tables of recalled values", () => {
  it("are all listed: none says that it is from memory without standing there to be disputed", () => {
    const folder = new URL("./", import.meta.url);
    const recalled = readdirSync(folder)
      .filter((name) => name.endsWith(".ts") && !/test|recalledTables/.test(name))
      .filter((name) => /from memory|recalled/i.test(readFileSync(new URL(name, folder), "utf8")))
      .map((name) => name.replace(/\.ts$/, ""))
      .filter((name) => !HOLD_NONE.includes(name));
    expect(recalled.length).toBeGreaterThan(5);
    expect(recalledTables.map(({ id }) => id).sort()).toEqual(recalled.sort());
  });
  it.each(recalledTables)(
    "$id: rows as wide as its headings, each with another name",
    ({ columns, rows }) => {
      expect(rows.length).toBeGreaterThan(4);
      for (const row of rows) {
        expect(row).toHaveLength(columns.length);
        for (const cell of row) expect(cell).toMatch(/\S/);
      }
      expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
    },
  );
});
