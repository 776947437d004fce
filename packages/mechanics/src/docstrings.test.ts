import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { docstringFaults } from "./docstrings.test-support.ts";
import * as mechanics from "./index.ts";

const root = fileURLToPath(new URL(".", import.meta.url));
const texts = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.includes(".test"))
  .map((file) => readFileSync(`${root}/${file}`, "utf8"));
const functions = Object.entries(mechanics).flatMap(([name, value]) =>
  typeof value === "function" ? [name] : [],
);

test("every public function says what it means, takes, gives and refuses, and by what source", () => {
  const { checked, faults } = docstringFaults(texts, new Set(functions));
  expect(faults).toEqual([]);
  expect(checked).toBe(functions.length);
  expect(checked).toBeGreaterThan(300);
});

describe("the check", () => {
  const whole = `/**
 * Area of a {@link Rectangle}.
 * @param side [m], > 0
 * @returns area [m2]
 * @throws RangeError when the side is not above zero
 *
 * Source: plane geometry.
 */
`;
  const check = (doc: string, code = "export function area(side: number): number { return side; }") =>
    docstringFaults([doc + code], new Set(["area"])).faults.map(({ lacks }) => lacks);

  test.each([
    ["a function", undefined],
    ["a constant", "export const area = (side: number): number => side;"],
    ["a default", "export function area(side = 1): number { return side; }"],
    ["parts of an object", "export function area({ side }: { side: number }): number { return side; }"],
  ])("passes %s", (_, code) => expect(check(whole, code)).toEqual([]));

  test.each([
    ["nothing at all", "", ["a meaning", "@param side", "@returns", "@throws", "Source:"]],
    ["a comment that is none", "/* Area of a rectangle, by its side [m]. */\n", ["a meaning"]],
    ["a docstring further up", `${whole}const other = 1;\n`, ["a meaning"]],
    ["no meaning", whole.replace(/ \* Area.*\n/, ""), ["a meaning"]],
    ["another parameter", whole.replace("side", "width"), ["@param side"]],
    ["no result", whole.replace(/ \* @returns.*\n/, ""), ["@returns"]],
    ["an empty word on errors", whole.replace(/@throws.*/, "@throws"), ["@throws"]],
    ["no source", whole.replace(/ \* Source.*\n/, ""), ["Source:"]],
  ])("finds %s", (_, doc, lacks) => expect(check(doc)).toEqual(expect.arrayContaining(lacks)));

  test("asks a function that gives nothing back for no result, and looks at named functions only", () => {
    const doc = whole.replace(/ \* @returns.*\n/, "");
    expect(check(doc, "export function area(side: number): void {}")).toEqual([]);
    expect(docstringFaults(["export function other() {}"], new Set(["area"]))).toEqual({
      checked: 0,
      faults: [],
    });
  });
});
