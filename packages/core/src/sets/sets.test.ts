import { type RuleFile, ruleFiles, type SetFile, setFiles, uses } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { evaluate } from "../evaluate.ts";
import { compareRuleFixture } from "../judge/compareRuleFixture.test-support.ts";
import { InputError, type Problem } from "../read/Problem.ts";
import { describeReport } from "../report/describeReport.ts";
import { renderText } from "../report/renderText.ts";
import { applySet } from "./applySet.ts";
import { SetError } from "./findChain.ts";
import { readSetText } from "./readSetText.ts";

const boreRule: RuleFile = {
  ...compareRuleFixture,
  requires: { fact: "block.bore", operator: "greaterThanInclusive", value: { fact: "limit.least" } },
  limits: {
    least: {
      value: "80 mm",
      range: ["75 mm", "85 mm"],
      standing: "common-practice",
      movedBy: [],
      cases: [{ when: { fact: "use", operator: "equal", value: "street" }, value: "82 mm" }],
    },
  },
};
const shop: SetFile = { id: "our-shop", title: "Our shop", about: "What we do differently." };
const reason = { because: "We learned it the hard way.", by: "J. B." };
const changed = (value: string, more: object = {}): SetFile => ({
  ...shop,
  limits: [{ rule: boreRule.id, limit: "least", value, ...reason, ...more }],
});
const build = (bore: string, use = "circuit") => ({ trialfit: "1", name: "Test", use, block: { bore } });
const judge = async (bore: string, sets: readonly (string | SetFile)[], use?: string) =>
  evaluate(build(`${bore} ± 0`, use), { rules: [boreRule], sets });
const word = async (...given: Parameters<typeof judge>) => (await judge(...given)).verdicts[0]?.verdict;

describe("a set of rules", () => {
  it("that changes nothing judges like none", async () => {
    for (const bore of ["79 mm", "81 mm"]) {
      const plain = await evaluate(build(`${bore} ± 0`), { rules: [boreRule] });
      expect((await judge(bore, [shop])).verdicts).toEqual(plain.verdicts);
      expect((await judge(bore, ["recommended"])).summary).toEqual(plain.summary);
    }
  });
  it("sets a limit of its own, for every use or before the cases of the rule", async () => {
    expect(await word("84 mm", [changed("84.5 mm")])).toBe("fails");
    expect(await word("84.5 mm", [changed("84.5 mm")], "street")).toBe("holds");
    const onDrag = changed("76 mm", { when: { fact: "use", operator: "equal", value: "drag" } });
    expect(await word("76 mm", [onDrag], "drag")).toBe("holds");
    expect(await word("76 mm", [onDrag])).toBe("fails");
    expect(await word("81 mm", [onDrag], "street")).toBe("fails");
  });
  it("says where its limit lies outside what the catalog knows in the trade", () => {
    const outside = (value: string) => applySet([changed(value)], [boreRule]).departures[0];
    expect(outside("85 mm")).toMatchObject({ kind: "limit", outsideRange: false, to: "85 mm" });
    expect(outside("86 mm")).toMatchObject({ outsideRange: true });
    expect(outside("74 mm")).toMatchObject({ outsideRange: true, from: "80 mm, and 82 mm in its cases" });
  });
  it("silences a rule with a reason and a name: judged and shown, not counted, never passed", async () => {
    const report = await judge("79 mm", [{ ...shop, silence: [{ rule: boreRule.id, ...reason }] }]);
    expect(report.verdicts).toEqual([]);
    expect(report.summary).toMatchObject({ holds: 0, fails: 0 });
    expect(report.set?.silenced).toMatchObject([{ rule: boreRule.id, verdict: "fails" }]);
    const text = renderText(describeReport(report)).replaceAll(/\s+/g, " ");
    expect(text).toContain("; 1 rule silenced:");
    expect(text).toContain("would say fails");
    expect(text).toContain(`${reason.because} (${reason.by})`);
  });
  it("adds rules of its own", async () => {
    const own = {
      ...boreRule,
      id: "own-rule",
      limits: { least: { ...boreRule.limits!.least!, value: "83 mm" } },
    };
    const report = await judge("81 mm", [{ ...shop, rules: [own] }]);
    expect(report.verdicts.map(({ rule, verdict }) => [rule, verdict])).toEqual([
      [boreRule.id, "holds"],
      ["own-rule", "fails"],
    ]);
    expect(report.set?.departures).toEqual([{ kind: "rule", set: "our-shop", rule: "own-rule" }]);
  });
  it("judges for its use, whatever the build states", async () => {
    expect(await word("81 mm", ["street"])).toBe("fails");
    expect(await word("81 mm", ["circuit"], "street")).toBe("holds");
    expect((await judge("81 mm", ["street"])).set).toMatchObject({ use: "street" });
  });
  it("extends another: the nearer one counts, and every departure is named with its set", async () => {
    const base = changed("83 mm");
    const nearer: SetFile = { ...changed("81 mm"), id: "nearer", extends: "our-shop", use: "street" };
    expect(await word("82 mm", [base, nearer])).toBe("holds");
    const { departures, chain } = applySet([base, nearer], [boreRule]);
    expect(chain.map(({ id }) => id)).toEqual(["our-shop", "nearer"]);
    expect(departures.map(({ kind, set }) => [kind, set])).toEqual([
      ["limit", "our-shop"],
      ["use", "nearer"],
      ["limit", "nearer"],
    ]);
  });
  it("is refused where it names what is not there, or extends itself", () => {
    const refused =
      (set: SetFile, more: readonly SetFile[] = []) =>
      () =>
        applySet([...more, set], [boreRule]);
    expect(refused({ ...shop, extends: "stret" })).toThrow(/did you mean "street"/);
    expect(refused({ ...shop, silence: [{ rule: "a-rule-for-test", ...reason }] })).toThrow(SetError);
    expect(refused(changed("80 kg"))).toThrow(/kilogram/);
    expect(
      refused({ ...changed("80 mm"), limits: [{ ...changed("80 mm").limits![0]!, limit: "most" }] }),
    ).toThrow(/no limit of/);
    expect(refused({ ...shop, rules: [boreRule] })).toThrow(/another rule has/);
    const ring: SetFile = { ...shop, id: "ring", extends: "our-shop" };
    expect(refused({ ...shop, extends: "ring" }, [ring])).toThrow(/extends itself/);
    expect(() => applySet([], [boreRule])).toThrow(SetError);
    expect(() => applySet(["stret"])).toThrow(/did you mean "street"/);
  });
});

describe("the shipped sets", () => {
  it("are the recommended one and one for each use, and all of them fit the catalog", () => {
    expect(setFiles.map(({ id }) => id).sort()).toEqual([...Object.keys(uses), "recommended"].sort());
    for (const { id } of setFiles) expect(applySet([id]).rules).toHaveLength(ruleFiles.length);
  });
});

describe("a set as a file", () => {
  const text = `id: our-shop
title: Our shop
about: What we do differently.
extends: endurance
limits:
  - { rule: rod-within-rated-speed, limit: most, value: "0.92", because: "We lost two at 0.95.", by: J. B. }
silence:
  - { rule: journal-overlap, because: "Our shafts are nitrided.", by: J. B. }
`;
  const problems = (changedText: string): readonly Problem[] => {
    try {
      readSetText(changedText, "shop.yaml");
    } catch (error) {
      if (error instanceof InputError) return error.problems;
      throw error;
    }
    return [];
  };
  it("is read, and can be judged with", () => {
    const { silenced, use } = applySet([readSetText(text, "shop.yaml")]);
    expect([...silenced]).toEqual(["journal-overlap"]);
    expect(use).toBe("endurance");
  });
  it.each<[string, string, string, Partial<Problem>]>([
    ["unknown key", "silence:", "silense:", { line: 7, column: 1, didYouMean: "silence" }],
    [
      "unknown rule in a limit",
      "rod-within-rated-speed",
      "rod-within-rated-sped",
      { line: 6, didYouMean: "rod-within-rated-speed" },
    ],
    [
      "unknown silenced rule",
      "journal-overlap",
      "journal-overlab",
      { line: 8, didYouMean: "journal-overlap" },
    ],
    ["unknown limit", "limit: most", "limit: least", { line: 6, field: "limits.0.limit" }],
    ["limit in another unit", '"0.92"', '"0.92 mm"', { line: 6, field: "limits.0.value" }],
    ["set that is not there", "extends: endurance", "extends: endurence", { line: 4, field: "extends" }],
    ["no reason", 'because: "Our shafts are nitrided.", ', "", { line: 8, field: "silence.0.because" }],
    ["nobody who answers for it", ", by: J. B. }\nsilence", " }\nsilence", { line: 6, field: "limits.0.by" }],
    ["use that there is not", "extends: endurance", "use: racing", { line: 4, field: "use" }],
    ["text that is not YAML", "limits:", "limits: {", {}],
    ["nothing", text, "", {}],
  ])("refuses: %s", (_, from, to, expected) => {
    const found = problems(text.replace(from, to));
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]).toMatchObject({ file: "shop.yaml", ...expected });
    expect(found[0]?.expected).not.toBe("");
  });
  it("checks the rules in it as rule files are checked", () => {
    const rule = JSON.stringify({ ...boreRule, id: "own-rule" });
    expect(problems(`${text}rules: [${rule}]\n`)).toEqual([]);
    const broken = problems(`${text}rules: [${rule.replace('"75 mm"', '"95 mm"')}]\n`);
    expect(broken[0]?.field).toBe("rules.0.limits.least.range");
    const twice = problems(`${text}rules: [${rule.replace("own-rule", "journal-overlap")}]\n`);
    expect(twice[0]?.found).toContain("which another rule has");
  });
});
