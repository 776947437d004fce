import { ruleFiles } from "@trialfit/rules";
import { expect, test } from "vitest";
import { rules } from "../data/catalog.ts";
import { boughtParts, orderData, wakingParts } from "../data/orderData.ts";
import { askFor, askText } from "./askFor.ts";

const every = ruleFiles.map(({ id, otherwise }) => ({ id, stops: otherwise.weight === "stop" }));

test("every field that is asked for belongs to a chosen part, each once, stops first", () => {
  let seen = 0;
  for (const { id } of boughtParts) {
    const list = askFor(orderData, [id], every).get(id)!;
    expect(new Set(list.map(({ field }) => field)).size).toBe(list.length);
    for (const { field, rules: count, stops } of list) {
      expect(field.part).toBe(id);
      expect(count).toBeGreaterThan(0);
      expect(stops).toBeLessThanOrEqual(count);
    }
    const needed = list.filter((one) => one.needed).map(({ stops }) => stops);
    expect(needed).toEqual([...needed].sort((a, b) => b - a));
    seen += list.length;
  }
  expect(seen).toBeGreaterThan(300);
});

test("a rule that only rests on a part’s field is woken by it", () => {
  const rule = rules.find(({ file }) => file.id === "rod-clears-cylinder-bottom")!;
  expect(wakingParts(rule)).toEqual(expect.arrayContaining(["crankshaft", "connecting-rod", "block"]));
  expect(wakingParts(rule)).not.toContain("targets");
  const asked = askFor(orderData, ["crankshaft"], [{ id: rule.file.id, stops: true }]).get("crankshaft")!;
  expect(asked.map(({ field }) => field.label)).toContain("Stroke");
});

test("no rules, nothing to ask; the text has a line for each field", () => {
  expect(askFor(orderData, ["piston"], []).get("piston")).toEqual([]);
  const asked = askFor(orderData, ["piston", "crankshaft"], every);
  const lines = askText(orderData, asked).split("\n");
  expect(lines[0]).toBe("Crankshaft");
  expect(lines.filter((line) => line.startsWith("- ")).length).toBe([...asked.values()].flat().length);
});

test("what a seller is asked for is said in words, not in the words of the file", () => {
  const forms = orderData.fields.map(({ form }) => form);
  expect(forms.length).toBeGreaterThan(100);
  expect(forms.filter((form) => /[a-z]-[a-z]/.test(form))).toEqual([]);
});
