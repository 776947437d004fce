import { fields } from "trialfit";
import { expect, it } from "vitest";
import { comparisonView } from "./comparisonView.ts";
import { demoBuilds } from "./demoBuilds.ts";

it("says what a chosen word means", () => {
  let count = 0;
  for (const { report } of demoBuilds)
    for (const comparison of report.verdicts.flatMap((one) => one.comparisons)) {
      const spec = fields.get(comparison.fact)?.spec;
      const { rest } = comparisonView(comparison);
      const word = /^: ?([\w ]+) \(/.exec(rest)?.[1];
      if (spec?.kind !== "choice" || word === undefined) continue;
      expect(Object.keys(spec.options).map((one) => one.replaceAll("-", " "))).toContain(word);
      count += 1;
    }
  expect(count).toBeGreaterThan(5);
});
