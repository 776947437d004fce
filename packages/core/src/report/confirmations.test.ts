import type { RuleFile } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { evaluate } from "../evaluate.ts";
import { compareRuleFixture } from "../judge/compareRuleFixture.test-support.ts";
import { RuleError } from "../judge/RuleError.ts";
import type { Stage } from "../read/FieldSpec.ts";
import { describeReport } from "./describeReport.ts";
import { groupOf } from "./groupFindings.ts";
import { renderText } from "./renderText.ts";

const rule: RuleFile = {
  ...compareRuleFixture,
  stages: ["final-assembly"],
  requires: { fact: "confirmed", operator: "equal", value: "yes" },
  confirm: { check: "Look at the caps.", moment: "When they are fitted.", failure: "One stands open." },
  otherwise: { work: "assemble", weight: "stop", do: "Take the cap off again." },
};
const saw = (seen: string, id = rule.id) => ({
  [id]: { seen, by: "J. B.", on: "2026-03-14", how: "feeler gauge both sides" },
});
const judge = (confirmations: object | undefined, stage?: Stage, file: RuleFile = rule) =>
  evaluate(
    { trialfit: "1", name: "Test", ...(confirmations === undefined ? {} : { confirmations }) },
    { rules: [file], ...(stage === undefined ? {} : { stage }) },
  );
/** The text of a report without its line ends. */
const asText = async (report: ReturnType<typeof judge>) =>
  renderText(describeReport(await report)).replaceAll(/\s+/g, " ");

describe("rules that a person confirms", () => {
  it("hold when it was seen, and say who saw what", async () => {
    const report = await judge(saw("yes"), "final-assembly");
    expect(report.verdicts[0]).toMatchObject({
      verdict: "holds",
      toConfirm: false,
      confirmed: { by: "J. B." },
    });
    expect(report.summary).toMatchObject({ sound: true, toConfirm: 0, unknown: 0 });
    expect(await asText(judge(saw("yes")))).toContain("by J. B. on 2026-03-14: feeler gauge both sides");
  });
  it("fail when it was not as it must be", async () => {
    const report = await judge(saw("no"), "final-assembly");
    expect(report.verdicts[0]).toMatchObject({ verdict: "fails", remedy: "Take the cap off again." });
    expect(report.summary.sound).toBe(false);
    expect(await asText(judge(saw("no")))).toContain("not as it must be, by J. B.");
  });
  it("are neither passed nor failed until somebody has looked", async () => {
    const report = await judge(undefined, "final-assembly");
    expect(report.verdicts[0]).toMatchObject({
      verdict: "unknown",
      toConfirm: true,
      missing: [`confirmations.${rule.id}`],
    });
    expect(groupOf(report.verdicts[0]!)).toBe("confirm");
    expect(report.summary).toMatchObject({ holds: 0, unknown: 0, toConfirm: 1, sound: false, stops: 1 });
    const text = await asText(judge(undefined, "final-assembly"));
    expect(text).toContain("1 to be confirmed");
    for (const words of Object.values(rule.confirm!)) expect(text).toContain(words);
  });
  it("do not hold up the choice of parts, and are counted apart there", async () => {
    const report = await judge(undefined);
    expect(report.summary).toMatchObject({ toConfirm: 1, sound: true, stops: 0 });
    const text = await asText(judge(undefined));
    expect(text).toContain("SOUND as far as numbers tell");
    expect(text).toContain("1 stop rule that a person must look at has not passed yet");
    expect(await asText(judge(saw("yes")))).toContain("SOUND as far as it was checked: every stop rule");
  });
  it("stay unknown, not pending, where another input is missing too", async () => {
    const both: RuleFile = {
      ...rule,
      requires: { all: [rule.requires, { fact: "block.bore", operator: "greaterThan", value: "80 mm" }] },
    };
    const report = await judge(saw("yes"), undefined, both);
    expect(report.verdicts[0]).toMatchObject({
      verdict: "unknown",
      toConfirm: false,
      missing: ["block.bore"],
    });
    const nothing = await judge(undefined, undefined, both);
    expect(nothing.verdicts[0]).toMatchObject({ verdict: "unknown", toConfirm: false });
    expect(nothing.summary).toMatchObject({ unknown: 1, toConfirm: 0, sound: false });
  });
  it("name a confirmation that no rule asks for, with the nearest rule", async () => {
    const report = judge({ ...saw("yes"), ...saw("yes", "a-rule-for-test") });
    expect((await report).strayConfirmations).toEqual([{ rule: "a-rule-for-test", didYouMean: rule.id }]);
    expect(await asText(report)).toContain("counts for nothing");
  });
  it("know the confirmations of rules of other stages", async () => {
    const report = await judge(saw("yes"), "choose");
    expect(report.verdicts).toEqual([]);
    expect(report.strayConfirmations).toEqual([]);
  });
  it("enter the hash of the build, with who and how", async () => {
    const hashes = await Promise.all(
      [undefined, saw("yes"), saw("no"), { [rule.id]: { ...saw("yes")[rule.id], by: "K. L." } }].map(
        async (one) => (await judge(one)).build.hash,
      ),
    );
    expect(new Set(hashes).size).toBe(4);
  });
  it("are refused where the rule does not say what to look at, or never asks", async () => {
    const { confirm: _, ...silent } = rule;
    await expect(judge(undefined, undefined, silent)).rejects.toThrow(RuleError);
    await expect(judge(undefined, undefined, silent)).rejects.toThrow(/confirm: with check/);
    const idle: RuleFile = { ...compareRuleFixture, confirm: rule.confirm! };
    await expect(judge(undefined, undefined, idle)).rejects.toThrow(/no condition asks for/);
  });
});
