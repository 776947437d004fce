import { describeComparison, evaluate, readBuildText } from "trialfit";
import { expect, test } from "vitest";
import { demoFiles } from "../../data/demoFiles.ts";
import { prettyUnits } from "../../data/prettyUnits.ts";
import { viewReport } from "./viewReport.ts";

const DECIDING = { fails: "no", open: "possible", unknown: "missing" } as const;

test.each([...demoFiles])("of %s, a finding says at a glance what decides it", async (_, text) => {
  const report = await evaluate(readBuildText(text));
  const glances = new Map(
    viewReport(report)
      .sections.flatMap(({ items }) => items)
      .map(({ id, glance }) => [id, glance]),
  );
  let counted = 0;
  for (const { rule, verdict, comparisons } of report.verdicts) {
    if (verdict === "holds" || verdict === "not-applicable") continue;
    const deciding = comparisons
      .filter((one) => one.in === "requires" && one.state === DECIDING[verdict])
      .map((one) => prettyUnits(describeComparison(one).text));
    if (deciding.length === 0 || rule === undefined) continue;
    const glance = glances.get(rule);
    if (glance === undefined) continue;
    expect(deciding, rule).toContain(glance);
    counted += 1;
  }
  expect(counted).toBeGreaterThanOrEqual(2);
});

test("a bearing that is too wide is said to be over the most, not to spare over the least", async () => {
  const report = await evaluate(readBuildText(demoFiles.get("larkspur-hill")!));
  const item = viewReport(report)
    .sections.flatMap(({ items }) => items)
    .find(({ id }) => id === "main-bearing-clearance")!;
  expect(item.word).toBe("fails");
  expect(item.glance).toMatch(/must be at most .* over/);
});
