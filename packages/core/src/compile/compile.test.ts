import { ruleFiles } from "@trialfit/rules";
import { expect, test } from "vitest";
import { compileRules } from "../judge/compileRules.ts";
import { compileColumns } from "./compileColumns.ts";
import { compileSlots } from "./compileSlots.ts";
import { FactColumns } from "./FactColumns.ts";
import { FactSlots, OTHER_WORD } from "./FactSlots.ts";

const rules = compileRules(ruleFiles);

test("every fact that decides a rule has a slot, every word that a rule names a number", () => {
  const slots = new FactSlots(rules);
  expect(slots.size).toBeGreaterThan(300);
  for (const [slot, name] of slots.names.entries()) expect(slots.slotOf(name)).toBe(slot);
  expect(slots.wordNumber("drag")).toBeGreaterThan(OTHER_WORD);
  expect(slots.wordNumber("a word that no rule names")).toBe(OTHER_WORD);
  expect(() => slots.slotOf("noSuchFact")).toThrow('no rule here is decided by "noSuchFact"');
});

test("a band without finite ends is refused, since it would read as missing", () => {
  const slots = new FactSlots(rules);
  const columns = new FactColumns(slots);
  const slot = slots.slotOf("crankshaft.balanceFactor");
  expect(() => columns.setBand(slot, 0, Number.POSITIVE_INFINITY)).toThrow(
    "crankshaft.balanceFactor: found a band from 0 to Infinity; expected finite ends",
  );
  expect(() => columns.setBand(slot, Number.NaN, 1)).toThrow(RangeError);
});

test("with nothing known no rule fails, and none holds", () => {
  const { judgeAll } = compileSlots(rules);
  const codes = new Set(judgeAll());
  expect(codes).toEqual(new Set([3]));
});

test("columns refuse more builds than there is room for, and judge none of none", () => {
  const columns = compileColumns(rules.slice(0, 5), 6);
  expect(columns.room).toBe(8);
  for (const count of [-1, 1.5, 9]) expect(() => columns.judge(count)).toThrow("expected 0 to 8");
  columns.judge(0);
  expect(columns.judged).toBe(0);
  columns.judge(8);
  expect(columns.judged).toBe(40);
});
