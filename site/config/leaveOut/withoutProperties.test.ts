import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { withoutProperties } from "./withoutProperties.ts";

/** What an expression comes to, as plain data. */
const run = (code: string): unknown => JSON.parse(JSON.stringify(runInNewContext(code)));

describe("a script without some properties", () => {
  it("keeps everything else, wherever they stand", () => {
    for (const [code, expected] of [
      ["{ examples: [1], a: 1 }", { a: 1 }],
      ["{ a: 1, examples: [{ given: { b: 1 } }] }", { a: 1 }],
      ["{ a: 1, examples: [1], b: { examples: 2, c: [{ examples: [] }] } }", { a: 1, b: { c: [{}] } }],
      ['{ "examples": [1], "a": "examples: [1], b" }', { a: "examples: [1], b" }],
      ["{ ['examples']: [1], a: ((examples) => examples)(2) }", { examples: [1], a: 2 }],
      ["{ a: (({ examples }) => examples)(Object.fromEntries([['examples', 3]])) }", { a: 3 }],
      ["{ examples: [1] }", {}],
    ] as const)
      expect(run(withoutProperties(`(${code})`, ["examples"])), code).toEqual(expected);
  });
});
