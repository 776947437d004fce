import { expect, test } from "vitest";
import { rules } from "./catalog.ts";
import { glossary } from "./glossary.ts";
import { ruleTexts, termAnchor, termsIn, useOf } from "./termUse.ts";

test("every term has its own anchor, a meaning, and texts that use it", () => {
  expect(glossary.length).toBeGreaterThanOrEqual(120);
  expect(new Set(glossary.map(termAnchor)).size).toBe(glossary.length);
  for (const term of glossary) {
    const { fields, quantities, rules } = useOf(term);
    expect(fields.length + quantities.length + rules.length, term.term).toBeGreaterThan(0);
    expect(term.means, term.term).toMatch(/^[A-Z].*\.$/);
  }
});

test("no spelling stands for two terms", () => {
  const spellings = glossary.flatMap(({ term, also, wordings }) =>
    [term, ...also, ...wordings].map((one) => one.toLowerCase()),
  );
  expect(spellings.filter((one, index) => spellings.indexOf(one) !== index)).toEqual([]);
});

test("terms are found as whole words, in the plural too", () => {
  const found = (text: string) => termsIn(text).map(({ term }) => term);
  expect(found("Two crankpins and a big end")).toEqual(["Big end", "Crankpin"]);
  expect(found("crowned borehole")).toEqual([]);
  const named = rules.filter((rule) => termsIn(ruleTexts(rule)).length > 0);
  expect(named.length).toBeGreaterThan(300);
});
