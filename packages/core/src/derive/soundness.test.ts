import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { FieldValue } from "../read/FieldValue.ts";
import { readBuildText } from "../read/readBuild.ts";
import { deriveAll } from "./deriveAll.ts";
import { quantities } from "./generated/quantities.ts";
import { withDefaults } from "./withDefaults.ts";

const SAMPLES = 60;
/** The search for a band stops when it gains less than this share of the spread. */
const SETTLED = 1e-4;

/** A small seeded generator, so that a failure can be repeated. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** One engine that the tolerances allow, defaults included: every number at some place of its band, ends often. */
function sampled(values: ReadonlyMap<string, FieldValue>, random: () => number): typeof values {
  return new Map(
    [...values].map(([path, value]) => {
      if (value.kind !== "dimension" || value.low === value.high) return [path, value];
      const share = random() < 0.5 ? Math.round(random()) : random();
      const nominal = value.low + share * (value.high - value.low);
      return [path, { ...value, nominal, low: nominal, high: nominal }];
    }),
  );
}

describe.each(["harrow-eight", "larkspur-hill"])("every quantity of %s", (name) => {
  it("stays within its band for any engine within the tolerances", () => {
    const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
    const values = withDefaults(readBuildText(text, name));
    const bands = deriveAll(values, quantities, quantities.keys());
    const random = generator(20_261_126);
    const outside = new Set<string>();
    let checked = 0;
    for (let sample = 0; sample < SAMPLES; sample += 1) {
      const engine = deriveAll(sampled(values, random), quantities, quantities.keys());
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
  }, 300_000);
});
