import { readFileSync } from "node:fs";
import { type Build, evaluate, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { sampleEngines } from "../../packages/core/src/derive/sampleEngines.test-support.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";

const SAMPLES = 60;

describe.each(["harrow-eight", "larkspur-hill"])("%s", (name) => {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  const build = readBuildText(readFileSync(path, "utf8"), name);

  it("no engine within the tolerances leaves a band or contradicts a certain verdict", async () => {
    const report = await evaluate(build);
    let numbers = 0;
    let verdicts = 0;
    // Defaults are drawn too: an engine without any tolerance left is quick to evaluate.
    for (const values of sampleEngines(withDefaults(build), 20_261_125, SAMPLES)) {
      const engine: Build = { ...build, values };
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
  }, 900_000);
});
