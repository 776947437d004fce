import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { editBuildText } from "../../read/editBuildText.ts";
import { InputError } from "../../read/Problem.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { renderText } from "../../report/renderText.ts";
import { describeSolution } from "./describeSolution.ts";
import { solve } from "./solve.ts";

const harrow = readFileSync(new URL("../../../demo/harrow-eight.yaml", import.meta.url), "utf8");
const with_ = (entries: Readonly<Record<string, string | undefined>>, text = harrow) =>
  editBuildText(
    text,
    Object.entries(entries).map(([path, value]) => ({ path, value })),
  );
const problems = (text: string) => {
  try {
    readBuildText(text, "build.yaml");
    return [];
  } catch (error) {
    return (error as InputError).problems;
  }
};
const options = { rules: [] };

describe("what a build file wants found", () => {
  it("has bounds, a step and a unit", () => {
    const { wanted, values } = readBuildText(
      with_({
        "piston.compressionHeight": "? 1.2 in to 1.4 in in steps of 0.001 in",
        "piston.crownVolume": "? 10 cm3 dish to 5 cm3 dome",
      }),
    );
    expect(wanted.get("piston.compressionHeight")).toMatchObject({ unit: "in", step: 0.0000254 });
    expect(wanted.get("piston.crownVolume")).toMatchObject({ low: -5e-6, high: 10e-6, step: 1e-7 });
    expect(values.has("piston.compressionHeight")).toBe(false);
  });
  it("keeps where it is meant", async () => {
    const text = with_({ "targets.power": "? 300 hp at wheels to 600 hp at wheels" });
    const { wanted, values } = readBuildText(text);
    const once = with_({ "targets.power": "? 300 hp to 600 hp at wheels" });
    expect(readBuildText(once).wanted.get("targets.power")).toMatchObject({ place: "at wheels" });
    expect(wanted.get("targets.power")).toMatchObject({ place: "at wheels", unit: "hp" });
    expect(values.get("targets.power.place")).toMatchObject({ value: "at wheels" });
    const aims = with_({
      "aims.torqueAtPower": "500 N m",
      "targets.power": "? 300 hp at wheels to 600 hp at wheels",
    });
    const solution = await solve(readBuildText(aims), options);
    expect(solution).toMatchObject({
      state: "solved",
      fields: [{ text: expect.stringMatching(/^\d+ hp at wheels$/) }],
    });
  });
  it.each([
    ["?", /says where it is meant/],
    ["? 300 hp to 600 hp", /says where it is meant/],
    ["? 300 hp at wheels to 600 hp at crank", /do not say the same/],
  ])("power %s is refused: at crank and at wheels are not the same", (text, message) => {
    const [problem] = problems(with_({ "targets.power": text }));
    expect(`${problem?.found} ${problem?.expected}`).toMatch(message);
  });
  it.each([
    ["? 1 to 2", /without a unit/],
    ["? 28 mm", /not a way to say/],
    ["? 2000 mm to 3000 mm", /outside what this dimension can be/],
    ["? 28 mm to 34 mm in steps of 0 mm", /greater than zero/],
    ["? 28 mm ± 1 to 34 mm", /tolerance on a bound/],
    ["? 28 mm to 28 mm", /without room/],
  ])("%s is refused with what was expected", (text, message) => {
    const [problem] = problems(with_({ "piston.compressionHeight": text }));
    expect(`${problem?.found} ${problem?.expected}`).toMatch(message);
    expect(problem).toMatchObject({ field: "piston.compressionHeight", line: expect.any(Number) });
  });
});

describe("solve", () => {
  const wanted = {
    "piston.compressionHeight": "? 28 mm to 36 mm",
    "piston.crownVolume": "? 20 cm3 dome to 20 cm3 dish",
    "aims.deckClearance": "0.10 mm",
    "aims.compressionRatio": "12.0",
  };
  it("finds the sizes, rounded to what can be ordered, and judges the build with them", async () => {
    const solution = await solve(readBuildText(with_(wanted)));
    expect(solution.state).toBe("solved");
    if (solution.state !== "solved") return;
    const [height, crown] = solution.fields;
    expect(height).toMatchObject({ path: "piston.compressionHeight", text: "33 mm", value: 0.033 });
    expect(crown?.text).toMatch(/^\d(\.\d)? cm3 (dome|dish)$/);
    expect(solution.aims.every(({ met }) => met)).toBe(true);
    expect(solution.report.fields.find(({ path }) => path === "piston.compressionHeight")?.text).toBe(
      "33 mm",
    );
    expect(solution.report.verdicts.length).toBeGreaterThan(300);
    const text = renderText(describeSolution(solution));
    expect(text).toContain("Piston: compression height");
    expect(text).toMatch(/12\.0\d? reached/);
    // Written into the file, they read as what was found.
    const written = with_({ "piston.compressionHeight": height!.text, "piston.crownVolume": crown!.text });
    expect(readBuildText(written).values.get("piston.crownVolume")).toMatchObject({ nominal: crown!.value });
  });
  it("names aims that pull against each other", async () => {
    const solution = await solve(
      readBuildText(with_({ ...wanted, "aims.squishGap": "at least 1.6 mm" })),
      options,
    );
    expect(solution).toMatchObject({ state: "conflict", bySteps: false });
    if (solution.state === "conflict")
      expect([...solution.conflict].sort()).toEqual(["deckClearance", "squishGap"]);
    expect(renderText(describeSolution(solution))).toMatch(/cannot be met together/);
  });
  it("says what is missing, and what nothing asks for", async () => {
    const { "aims.compressionRatio": _, ...fewer } = wanted;
    expect(await solve(readBuildText(with_(fewer)), options)).toMatchObject({
      state: "aimless",
      idle: ["piston.crownVolume"],
    });
    const bare = await solve(readBuildText(with_({ ...wanted, "crankshaft.stroke": undefined })), options);
    expect(bare).toMatchObject({ state: "missing", missing: expect.arrayContaining(["crankshaft.stroke"]) });
  });
  it("refuses aims that are none, with their line", async () => {
    const refused = async (aims: Readonly<Record<string, string>>) => {
      const text = with_({ "piston.compressionHeight": "?", ...aims });
      const error = await solve(readBuildText(text, "build.yaml"), options).catch((one: unknown) => one);
      expect(error).toBeInstanceOf(InputError);
      return (error as InputError).problems[0]!;
    };
    expect(await refused({ "aims.deckClearence": "0.1 mm" })).toMatchObject({
      didYouMean: "deckClearance",
      line: expect.any(Number),
    });
    expect(await refused({ "aims.squishHeight": "1 mm" })).toMatchObject({
      didYouMean: "squishGap",
      expected: expect.stringContaining("squishVelocity (greatest squish velocity)"),
    });
    expect((await refused({ "aims.deckClearance": "0.1" })).found).toMatch(/without a unit/);
    expect((await refused({ "aims.deckClearance": "0.2 mm to 0.1 mm" })).expected).toMatch(
      /smaller one to a greater/,
    );
    expect((await refused({})).expected).toMatch(/aims: \{/);
  });
});
