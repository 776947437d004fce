import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { takeApart } from "./takeApart.ts";

const names = { next: "next", numbered: "kept" };

/** What a module without imports exports. */
async function run(code: string): Promise<Record<string, unknown>> {
  return import(`data:text/javascript,${encodeURIComponent(code)}`);
}

async function runApart(code: string) {
  const { code: rest, inOrder, numbered } = takeApart(code, names);
  const data = JSON.stringify([inOrder, numbered]);
  const head = `const [all, kept] = JSON.parse(${JSON.stringify(data)}); let at = 0; const next = () => all[at++];\n`;
  return { rest, exports: await run(head + rest) };
}

const long = "a text that is long enough to be moved";

describe("a script without its constants", () => {
  test("keeps what computes and reads the rest in order", async () => {
    const { rest, exports } = await runApart(`
      const declare = (one) => ({ ...one, twice: () => one.compute(2) });
      export const a = declare({ id: "a", name: "${long} 1", compute: (x) => x * 3, valid: "${long} 2", decimals: -2, on: !0 });
      export const list = [["${long} 3", 1, null], { "${long}": true }];`);
    expect(rest).not.toContain("a text that");
    expect(rest).toContain("(x) => x * 3");
    expect(exports.a).toMatchObject({
      id: "a",
      name: `${long} 1`,
      valid: `${long} 2`,
      decimals: -2,
      on: true,
    });
    expect((exports.a as { twice: () => number }).twice()).toBe(6);
    expect(exports.list).toEqual([[`${long} 3`, 1, null], { [long]: true }]);
  });
  test("is not put out of step by what is evaluated later, twice or not at all", async () => {
    const code = `
      const never = false && ["${long} a", 1];
      function later() { return [{ text: "${long} b" }, "${long} c"]; }
      const choice = 1 > 2 ? "${long} d" : "${long} e";
      export const first = ["${long} f", 1];
      export const made = [later(), later()];
      for (const x of [1, 2]) made.push([x, "${long} g"]);
      export class Kept { static one = ["${long} h", 2]; each = ["${long} i", 3]; }
      export const got = [never, choice, new Kept().each === new Kept().each, Kept.one];`;
    const { exports, rest } = await runApart(code);
    const plain = await run(code);
    for (const name of ["first", "made", "got"]) expect(exports[name], name).toEqual(plain[name]);
    expect((exports.made as unknown[][])[0]![0]).not.toBe((exports.made as unknown[][])[1]![0]);
    expect(rest).not.toContain(`${long} f`);
  });
  test("makes a new group at each call, whatever was done to the one before", async () => {
    const code = `
      const make = (x) => ({ id: "${long} a", on: true, x, list: [1, "${long} b", null, 2.5e-3] });
      const flat = () => ({ id: "${long} c", valid: "${long} d" });
      const nested = () => ({ id: "${long} e", within: { text: "${long} f" }, more: [["${long} g"]] });
      export const first = [make(1), flat(), nested()];
      for (const one of first) { one.id = "changed"; (one.list ?? one.within ?? []).text = 1; one.more?.[0].push(3); }
      export const again = [make(2), flat(), nested()];`;
    const { exports } = await runApart(code);
    const plain = await run(code);
    expect(exports.again).toStrictEqual(plain.again);
    expect(exports.first).toStrictEqual(plain.first);
  });
  test("leaves alone what is no value", async () => {
    const code = `"use strict, and a long directive it is";
      export const tag = String.raw\`${long} with \\n in it\`;
      export const odd = { "__proto__": null, "a long name of a property": -0, big: 12345678901234567890123456789n };
      export const { "another long name of a property": found = 4 } = {};
      export const load = () => import("./a-file-with-a-very-long-name.js");`;
    const { exports, rest } = await runApart(code);
    expect(Object.getPrototypeOf(exports.odd)).toBe(null);
    expect(Object.is((exports.odd as Record<string, number>)["a long name of a property"], -0)).toBe(true);
    expect(exports.tag).toBe(`${long} with \\n in it`);
    expect(exports.found).toBe(4);
    expect(rest).toContain('import("./a-file-with-a-very-long-name.js")');
  });
  test.prop([fc.array(fc.jsonValue({ depthSize: "medium" }), { maxLength: 8 })])(
    "gives any values back, wherever they stand",
    async (values) => {
      const written = values.map((one) => JSON.stringify(one));
      const code = `export const list = [${written.join(",")}];
        export const made = { ${written.map((one, n) => `v${n}: ${one}, f${n}: () => ${n}`).join(",")} };`;
      const { exports } = await runApart(code);
      const plain = await run(code);
      expect(exports.list).toStrictEqual(plain.list);
      expect(JSON.stringify(exports.made)).toBe(JSON.stringify(plain.made));
    },
  );
});
