import { ruleFiles } from "@trialfit/rules";
import { expect, test } from "vitest";
import { withLinks, withTitles } from "./ruleTitles.ts";

test("every rule is named by its title, and what is no rule of the catalog stays as it is", () => {
  let seen = 0;
  for (const { id, title } of ruleFiles) {
    expect(withTitles(`[${id}] fails`)).toBe(`“${title}” fails`);
    expect(withLinks(`breaks [${id}], [${id}]`)).toBe(`breaks [${id}|${title}], [${id}|${title}]`);
    // A link is marked by these characters, so that no title may have them.
    expect(title).not.toMatch(/[|\]]/);
    seen += 1;
  }
  expect(seen).toBeGreaterThan(300);
  for (const text of ["[shop-own-rule] fails", "Crankshaft: stroke [crankshaft.stroke]", "[]"])
    expect([withTitles(text), withLinks(text)]).toEqual([text, text]);
});
