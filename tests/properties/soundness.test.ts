import { readFileSync } from "node:fs";
import { type Build, evaluate, type FieldValue, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";

const SAMPLES = 60;

/** A small seeded generator, so that a failure can be repeated. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** One engine that the tolerances allow: every dimension at some place of its band, ends more often than not. */
function sampled(
  values: ReadonlyMap<string, FieldValue>,
  random: () => number,
): ReadonlyMap<string, FieldValue> {
  return new Map(
    [...values].map(([path, value]) => {
      if (value.kind !== "dimension" || value.low === value.high) return [path, value];
      const share = random() < 0.6 ? Math.round(random()) : random();
      const nominal = value.low + share * (value.high - value.low);
      return [path, { ...value, nominal, low: nominal, high: nominal }];
    }),
  );
}

describe.each(["harrow-eight", "larkspur-hill"])("%s", (name) => {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  const build = readBuildText(readFileSync(path, "utf8"), name);

  it("no engine within the tolerances leaves a band or contradicts a certain verdict", async () => {
    const report = await evaluate(build);
    const random = generator(20_261_125);
    let numbers = 0;
    let verdicts = 0;
    for (let sample = 0; sample < SAMPLES; sample += 1) {
      const engine: Build = { ...build, values: sampled(build.values, random) };
      const one = await evaluate(engine);
      for (const [index, quantity] of one.quantities.entries()) {
        const band = report.quantities[index]!;
        if (quantity.state !== "value" || band.state !== "value" || band.low === band.high) continue;
        const slack = 1e-9 * Math.max(Math.abs(band.low!), Math.abs(band.high!)) + 1e-9;
        expect(
          quantity.nominal! >= band.low! - slack && quantity.nominal! <= band.high! + slack,
          quantity.id,
        ).toBe(true);
        numbers += 1;
      }
      for (const [index, verdict] of one.verdicts.entries()) {
        const certain = report.verdicts[index]!;
        if (certain.verdict !== "holds" && certain.verdict !== "fails") continue;
        expect([certain.verdict, "not-applicable"], certain.rule).toContain(verdict.verdict);
        verdicts += 1;
      }
    }
    expect(numbers).toBeGreaterThan(80 * SAMPLES);
    expect(verdicts).toBeGreaterThan(40 * SAMPLES);
  }, 240_000);
});
