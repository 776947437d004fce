import { ruleFiles } from "@trialfit/rules";
import { evaluate, readBuildText } from "trialfit";
import { expect, test } from "vitest";
import { demoFiles } from "../data/demoFiles.ts";
import { judgeChanged } from "./judgeChanged.ts";

const [demo, text] = [...demoFiles].find(([id]) => id === "larkspur-hill")!;

test("without a change, the answer is the verdict of the whole evaluation", async () => {
  const asked = ruleFiles.filter((_, index) => index % 12 === 0);
  const report = await evaluate(readBuildText(text), { rules: asked });
  let seen = 0;
  for (const { id } of asked) {
    const answer = await judgeChanged({ number: 1, rule: id, demo, changes: {} });
    const expected = report.verdicts.find(({ rule }) => rule === id)!.verdict;
    expect("view" in answer && answer.view.verdict, id).toBe(expected);
    seen += 1;
  }
  expect(seen).toBeGreaterThan(20);
});

test("a change is judged as a build file with it would be", async () => {
  const rule = ruleFiles.find(({ id }) => id === "rod-clears-cylinder-bottom")!;
  const seen = new Set<string>();
  for (const stroke of ["80 mm", "94 mm", "100 mm"]) {
    const report = await evaluate(readBuildText(text.replace(/^ {2}stroke: .*$/m, `  stroke: ${stroke}`)), {
      rules: [rule],
    });
    const answer = await judgeChanged({
      number: 7,
      rule: rule.id,
      demo,
      changes: { "crankshaft.stroke": { value: stroke, unit: "mm" } },
    });
    expect(answer.number).toBe(7);
    expect("view" in answer && answer.view.verdict).toBe(report.verdicts[0]!.verdict);
    seen.add(report.verdicts[0]!.verdict);
  }
  expect(seen.size).toBeGreaterThan(1);
});

test("problems name their field, what is left out is missing, a confirmation counts", async () => {
  const ask = (rule: string, changes: Record<string, string | undefined>) =>
    judgeChanged({
      number: 1,
      rule,
      demo,
      changes: Object.fromEntries(
        Object.entries(changes).map(([path, value]) => [path, value === undefined ? undefined : { value }]),
      ),
    });
  expect(await ask("rod-clears-cylinder-bottom", { "crankshaft.stroke": "94" })).toMatchObject({
    problems: [{ path: "crankshaft.stroke", text: expect.stringContaining("without a unit") }],
  });
  expect(await ask("rod-clears-cylinder-bottom", { "crankshaft.stroke": undefined })).toMatchObject({
    view: { verdict: "unknown" },
  });
  const path = "confirmations.caps-drawn-down-evenly";
  expect(await ask("caps-drawn-down-evenly", { [path]: "yes" })).toMatchObject({
    view: { verdict: "holds" },
  });
  expect(await ask("caps-drawn-down-evenly", { [path]: "no" })).toMatchObject({ view: { verdict: "fails" } });
  await expect(ask("no-such-rule", {})).rejects.toThrow(RangeError);
});

test("a size typed whole into the box of its number is judged as it was typed", async () => {
  const rule = "rod-clears-cylinder-bottom";
  const ask = async (value: string, unit: string, tolerance = "") => {
    const changes = { "crankshaft.stroke": { value, unit, tolerance, word: "" } };
    const { number: _, ...said } = await judgeChanged({ number: 1, rule, demo, changes });
    return said;
  };
  const plain = await ask("3.7", "in");
  expect(plain).toHaveProperty("view");
  expect(await ask("3.7 in", "mm")).toEqual(plain);
  expect(await ask("3.7 in ± 0.01", "mm", "0.5")).toEqual(await ask("3.7", "in", "0.01"));
  expect(await ask("3.7 in", "mm", "0.254")).toEqual(await ask("3.7", "in", "0.01"));
  expect(await ask("3.7 inn", "mm")).toMatchObject({ problems: [{ path: "crankshaft.stroke" }] });
});
