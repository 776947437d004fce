import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { editBuildText } from "./editBuildText.ts";
import { InputError } from "./Problem.ts";
import { parseSource } from "./parseSource.ts";
import { readBuildText } from "./readBuild.ts";

const demo = (name: string) => readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
const demos = ["harrow-eight", "larkspur-hill"].map(demo);
const data = (text: string) => parseSource(text, "build").data as Record<string, Record<string, unknown>>;
const small = `# planned in winter
trialfit: "1"
name: Small
# as delivered
block:
  bore: 80 mm ± 0.01 # by the data sheet
`;

describe("writing into a build file", () => {
  test("keeps comments and everything that was not named", () => {
    const text = editBuildText(small, [{ path: "block.bore", value: "80.5 mm ± 0.01" }]);
    expect(text).toBe(small.replace("80 mm", "80.5 mm"));
  });
  test("adds a part that was not there, and takes it out again with its last entry", () => {
    const added = editBuildText(small, [{ path: "piston.mass", value: "410 g" }]);
    expect(data(added).piston).toEqual({ mass: "410 g" });
    expect(editBuildText(added, [{ path: "piston.mass", value: undefined }])).toBe(small);
  });
  test("fills a part that stands there without an entry", () => {
    const text = editBuildText(`${small}oil:\n`, [{ path: "oil.density", value: "870 kg/m3" }]);
    expect(data(text).oil).toEqual({ density: "870 kg/m3" });
  });
  test("writes objects and lists; a number stays text for every reader of YAML", () => {
    const measured = { value: "227.05 mm", provenance: "measured", instrument: "deck bridge" };
    const text = editBuildText(small, [
      { path: "block.deckHeight", value: measured },
      { path: "block.cylinders", value: "4" },
      { path: "targets.torqueCurve", value: [{ speed: "3000 rpm", torque: "200 N m" }] },
    ]);
    expect(text).toContain('cylinders: "4"');
    expect(data(text).block!.deckHeight).toEqual(measured);
    expect(data(text).targets!.torqueCurve).toEqual([{ speed: "3000 rpm", torque: "200 N m" }]);
  });
  test("leaves JSON as JSON", () => {
    const text = editBuildText('{ "trialfit": 1, "name": "Small" }', [
      { path: "block.bore", value: "80 mm ± 0.01" },
    ]);
    expect(JSON.parse(text)).toEqual({ trialfit: 1, name: "Small", block: { bore: "80 mm ± 0.01" } });
  });
  test("refuses what is no build file, and paths that are none", () => {
    expect(() => editBuildText("a: [", [])).toThrow(InputError);
    expect(() => editBuildText(small, [{ path: "__proto__.x", value: "1" }])).toThrow(/not the path/);
    expect(() => editBuildText(small, [{ path: "", value: "1" }])).toThrow(/not the path/);
  });
  test.prop([fc.constantFrom(...demos), fc.nat(), fc.stringMatching(/^\d{1,3}\.\d{1,3} mm( ± 0\.0\d)?$/)])(
    "one entry of a demo build changes, every other reads as before",
    (text, number, value) => {
      const before = data(text);
      const paths = Object.keys(before).flatMap((part) =>
        typeof before[part] === "object" ? Object.keys(before[part]!).map((name) => `${part}.${name}`) : [],
      );
      const path = paths[number % paths.length]!;
      const [part, name] = path.split(".") as [string, string];
      const after = data(editBuildText(text, [{ path, value }]));
      expect(after).toEqual({ ...before, [part]: { ...before[part], [name]: value } });
    },
  );
  test("a demo build written anew reads the same", () => {
    for (const text of demos) {
      const story = { path: "story", value: "Invented." };
      const values = readBuildText(editBuildText(text, [story])).values;
      const before = new Map(readBuildText(text).values).set("story", { kind: "text", value: "Invented." });
      expect(values).toEqual(before);
      expect(values.size).toBeGreaterThan(100);
    }
  });
});
