import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readBuildText } from "../read/readBuild.ts";
import { deriveAll } from "./deriveAll.ts";
import { quantities } from "./generated/quantities.ts";
import { sampleEngines } from "./sampleEngines.test-support.ts";
import { withDefaults } from "./withDefaults.ts";

const SAMPLES = 60;
/** The search for a band stops when it gains less than this share of the spread. */
const SETTLED = 1e-4;

describe.each(["harrow-eight", "larkspur-hill"])("every quantity of %s", (name) => {
  it("stays within its band for any engine within the tolerances", () => {
    const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
    const values = withDefaults(readBuildText(text, name));
    const bands = deriveAll(values, quantities, quantities.keys());
    const outside = new Set<string>();
    let checked = 0;
    for (const sampled of sampleEngines(values, 20_261_126, SAMPLES)) {
      const engine = deriveAll(sampled, quantities, quantities.keys());
      for (const [id, found] of engine) {
        const band = bands.get(id)!;
        if (found.state !== "value" || band.state !== "value" || quantities.get(id)!.nominalOnly) continue;
        const slack =
          SETTLED * (band.high - band.low) + 1e-9 * Math.max(Math.abs(band.low), Math.abs(band.high)) + 1e-9;
        if (found.nominal < band.low - slack || found.nominal > band.high + slack)
          outside.add(`${id}: ${found.nominal} is outside of ${band.low} to ${band.high}`);
        checked += 1;
      }
    }
    expect([...outside]).toEqual([]);
    expect(checked).toBeGreaterThan(200 * SAMPLES);
  }, 900_000);
});
