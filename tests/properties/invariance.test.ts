import { ruleFiles } from "@trialfit/rules";
import { evaluate, type Report } from "trialfit";
import { describe, expect, it } from "vitest";
import { demoBuild, fieldPaths, inInches, type RawBuild, withField, withoutField } from "./builds.ts";

const names = ["harrow-eight", "larkspur-hill"];
const words = (report: Report) => Object.fromEntries(report.verdicts.map((one) => [one.rule, one.verdict]));

function everyText(build: RawBuild, change: (text: string) => string): RawBuild {
  const visit = (value: unknown): unknown => {
    if (typeof value === "string") return change(value);
    if (Array.isArray(value)) return value.map(visit);
    if (typeof value === "object" && value !== null)
      return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, visit(inner)]));
    return value;
  };
  return visit(build) as RawBuild;
}

const reversed = (build: RawBuild): RawBuild =>
  Object.fromEntries(
    Object.entries(build)
      .reverse()
      .map(([key, value]) => [
        key,
        typeof value === "object" ? Object.fromEntries(Object.entries(value).reverse()) : value,
      ]),
  );

describe.each(names)("%s", (name) => {
  const build = demoBuild(name);

  it("gets the same verdicts in inches", async () => {
    const inches = everyText(build, inInches);
    expect(JSON.stringify(inches).match(/ in[ "]/g)?.length ?? 0).toBeGreaterThan(40);
    const [metric, imperial] = [await evaluate(build), await evaluate(inches)];
    expect(words(imperial)).toEqual(words(metric));
    for (const [index, quantity] of metric.quantities.entries()) {
      if (quantity.state !== "value") continue;
      const other = imperial.quantities[index]!;
      expect(Math.abs(other.nominal! - quantity.nominal!), quantity.id).toBeLessThanOrEqual(
        1e-9 * Math.abs(quantity.nominal!) + 1e-12,
      );
    }
  }, 600_000);

  it("gets the same report whatever the order of fields and rules", async () => {
    const plain = await evaluate(build);
    const shuffled = await evaluate(reversed(build), { rules: [...ruleFiles].reverse() });
    expect(shuffled.build.hash).toBe(plain.build.hash);
    expect(shuffled.verdicts).toEqual(plain.verdicts);
    const asked = new Set(shuffled.quantities.map((one) => one.id));
    expect(asked.size).toBeGreaterThan(80);
    expect(shuffled.quantities).toEqual(plain.quantities.filter((one) => asked.has(one.id)));
  }, 600_000);

  it("survives JSON and says the same twice, also when run side by side", async () => {
    const [one, two] = await Promise.all([evaluate(build), evaluate(build)]);
    expect(JSON.parse(JSON.stringify(one))).toEqual(JSON.parse(JSON.stringify(two)));
    expect(one.verdicts).toHaveLength(ruleFiles.length);
  }, 600_000);

  it("never turns a missing input into a pass, and names it", async () => {
    const whole = await evaluate(build);
    const full = words(whole);
    const grounds = new Map(whole.verdicts.map(({ rule, takenFor }) => [rule, new Set(takenFor)]));
    const paths = fieldPaths(build);
    let named = 0;
    for (const path of paths.filter((_, index) => index % 10 === 0)) {
      const report = await evaluate(withoutField(build, path));
      const assumed = report.assumptions.some((one) => one.path === path);
      for (const verdict of report.verdicts) {
        // Another way to a value says what it takes for granted: the verdict then rests on that, in words.
        const otherwise = verdict.takenFor.some((text) => !grounds.get(verdict.rule)!.has(text));
        // What holds whether or not the rule is relevant holds also without the field that says so.
        if (verdict.verdict === "holds" && !assumed && !otherwise)
          expect(["holds", "not-applicable"], `${verdict.rule} without ${path}`).toContain(
            full[verdict.rule],
          );
        if (verdict.missing.includes(path)) named += 1;
      }
    }
    expect(named).toBeGreaterThan(5);
  }, 600_000);

  it("is a useful report with half of the fields", async () => {
    // Which fields belong together changes with every field that is added, so both halves count.
    let judged = 0;
    for (const left of [0, 1]) {
      const half = fieldPaths(build)
        .filter((_, index) => index % 2 === left)
        .reduce(withoutField, build);
      const report = await evaluate(half);
      const { holds, fails, open, unknown } = report.summary;
      expect(unknown).toBeGreaterThan(10);
      judged += holds + fails + open;
      for (const verdict of report.verdicts) {
        if (verdict.verdict === "unknown")
          expect(verdict.missing.length + verdict.reasons.length, verdict.rule).toBeGreaterThan(0);
      }
    }
    expect(judged).toBeGreaterThan(10);
  }, 600_000);
});

describe("moving one value across a limit", () => {
  it("flips its rule once", async () => {
    const build = demoBuild("harrow-eight");
    const rules = ruleFiles.filter((rule) => rule.id === "top-ring-gap-not-too-small");
    const verdicts: string[] = [];
    for (let gap = 0.3; gap <= 0.9; gap += 0.02) {
      const report = await evaluate(withField(build, "ringSet.topRingEndGap", `${gap.toFixed(2)} mm ± 0`), {
        rules,
      });
      verdicts.push(words(report)["top-ring-gap-not-too-small"] ?? "gone");
    }
    const changes = verdicts.filter((verdict, index) => index > 0 && verdict !== verdicts[index - 1]);
    expect(new Set(verdicts)).toEqual(new Set(["fails", "holds"]));
    expect(changes).toHaveLength(1);
  }, 600_000);
});
