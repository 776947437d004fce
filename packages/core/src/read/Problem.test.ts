import { expect, test } from "vitest";
import { describeProblem } from "./Problem.ts";

test("a problem ends as a sentence does, once", () => {
  expect(describeProblem({ found: "9 m", expected: "less; was another unit meant?" })).toBe(
    "found 9 m; expected less; was another unit meant?",
  );
  expect(describeProblem({ found: "x", expected: "a number" })).toBe("found x; expected a number.");
  expect(describeProblem({ found: "boer", expected: "a field", didYouMean: "bore" })).toBe(
    'found boer. Did you mean "bore"? Expected a field.',
  );
});
