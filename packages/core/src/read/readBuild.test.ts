import { describe, expect, it } from "vitest";
import { InputError, type Problem } from "./Problem.ts";
import { readBuild, readBuildText } from "./readBuild.ts";

const problemsOf = (run: () => unknown): readonly Problem[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error("nothing was refused");
};
const file = (body: string) => `trialfit: "1"\nname: Test\n${body}`;
const refused = (body: string) => problemsOf(() => readBuildText(file(body), "b.yaml"));

describe("what is read", () => {
  it("keeps value, tolerance, provenance and place", () => {
    const build = readBuildText(
      file(`use: circuit
targets: { power: 420 kW at crank }
block:
  bore: 88.50 mm ± 0.01
  deckHeight: { value: 8.937 in, tolerance: 0.001 in, provenance: measured, instrument: depth micrometer }
piston: { crownVolume: 11.5 cm3 dome ± 0.3, pinOffset: 0 mm }
connectingRod:
  bigEndOutline:
    - { along: 33 mm towards cap, across: 0 mm }
    - { along: 33 mm towards cap, across: 14 mm, cornerRadius: 2 mm }
    - { along: 39 mm towards pin, across: 38.5 mm }
`),
    );
    expect(build.values.get("block.bore")).toMatchObject({
      nominal: 0.0885,
      low: 0.0885 - 1e-5,
      toleranceFrom: "stated",
    });
    expect(build.values.get("block.deckHeight")).toMatchObject({
      provenance: "measured",
      instrument: "depth micrometer",
    });
    expect(build.values.get("targets.power")).toMatchObject({ nominal: 420000, provenance: "target" });
    expect(build.values.get("targets.power.place")).toMatchObject({ value: "at crank" });
    expect(build.values.get("piston.crownVolume")).toMatchObject({ nominal: -11.5e-6 });
    const rod = build.values.get("connectingRod.bigEndOutline");
    expect(rod).toMatchObject({
      rows: [{ along: -0.033, across: 0 }, { cornerRadius: 0.002 }, { along: 0.039 }],
    });
  });
  it("reads JSON the same way, with a plain number for a ratio", () => {
    const json = JSON.stringify({ trialfit: 1, name: "Test", targets: { compressionRatio: 9.6 } }, null, 2);
    expect(readBuildText(json).values.get("targets.compressionRatio")).toMatchObject({ nominal: 9.6 });
    expect(readBuild(JSON.parse(json)).values.get("targets.compressionRatio")).toMatchObject({
      nominal: 9.6,
    });
  });
});

describe("what is refused, with place, found and expected", () => {
  it.each<[string, string, Partial<Problem>]>([
    [
      "misspelled field",
      "crankshaft:\n  strok: 94 mm",
      { line: 4, column: 3, field: "crankshaft.strok", didYouMean: "stroke" },
    ],
    ["misspelled part", "pistn: { mass: 300 g }", { line: 3, column: 1, didYouMean: "piston" }],
    ["missing unit", "block:\n  bore: 88.5", { line: 4, column: 9, field: "block.bore" }],
    ["wrong unit", "block: { bore: 88.5 kg }", { field: "block.bore" }],
    ["negative bore", "block: { bore: -88.5 mm }", { field: "block.bore" }],
    ["NaN", "block: { bore: NaN }", { field: "block.bore" }],
    ["NaN with a unit", "block: { bore: .nan mm }", { field: "block.bore" }],
    ["empty value", "block: { bore: }", { field: "block.bore" }],
    ["missing place", "targets: { power: 420 kW }", { field: "targets.power" }],
    ["missing sign word", "piston: { crownVolume: 11.5 cm3 }", { field: "piston.crownVolume" }],
    ["sign beside a sign word", "piston: { crownVolume: -11.5 cm3 dish }", { field: "piston.crownVolume" }],
    ["misspelled choice", "use: curcuit", { field: "use", didYouMean: "circuit" }],
    ["fraction of a cylinder", "block: { cylinders: 4.5 }", { field: "block.cylinders" }],
    ["text for a part", "block: iron", { field: "block" }],
    ["list for a dimension", "block: { bore: [1, 2] }", { field: "block.bore" }],
    [
      "unknown detail",
      "block: { bore: { value: 88 mm, tolerence: 0.1 mm } }",
      { field: "block.bore.tolerence", didYouMean: "tolerance" },
    ],
    ["__proto__ key", "block: { __proto__: { x: 1 } }", { found: 'the key "__proto__"' }],
    ["duplicate key", "block: { bore: 88 mm, bore: 89 mm }", { line: 3 }],
    [
      "outline of the cap alone",
      "connectingRod: { bigEndOutline: [{ along: 33 mm towards cap, across: 0 mm }, { along: 33 mm towards cap, across: 14 mm }, { along: 28 mm towards cap, across: 23 mm }] }",
      { field: "connectingRod.bigEndOutline" },
    ],
    [
      "outline that begins off the cap",
      "connectingRod: { bigEndOutline: [{ along: 33 mm towards cap, across: 5 mm }, { along: 0 mm, across: 38 mm }, { along: 60 mm towards pin, across: 10 mm }] }",
      { field: "connectingRod.bigEndOutline" },
    ],
    [
      "inches for millimetres in an outline",
      "connectingRod: { bigEndOutline: [{ along: 33 mm towards cap, across: 0 mm }, { along: 0 mm, across: 38 in }, { along: 60 mm towards pin, across: 10 mm }] }",
      { field: "connectingRod.bigEndOutline.1.across" },
    ],
    [
      "coordinates of another kind in an outline",
      "connectingRod: { bigEndOutline: [{ x: 3 mm, y: 0 mm }, { x: 3 mm, y: 0 mm }, { x: 3 mm, y: 0 mm }] }",
      { field: "connectingRod.bigEndOutline.0.along" },
    ],
    [
      "torque curve that turns back",
      "targets: { torqueCurve: [{ speed: 3000 rpm, torque: 300 N m }, { speed: 5000 rpm, torque: 320 N m }, { speed: 4000 rpm, torque: 310 N m }] }",
      { field: "targets.torqueCurve", found: "a list: row 3 is at no higher speed than row 2" },
    ],
    [
      "torque curve with one speed twice",
      "targets: { torqueCurve: [{ speed: 3000 rpm, torque: 300 N m }, { speed: 3000 rpm, torque: 320 N m }, { speed: 4000 rpm, torque: 310 N m }] }",
      { field: "targets.torqueCurve", found: "a list: row 2 is at no higher speed than row 1" },
    ],
    [
      "torque curve of two rows",
      "targets: { torqueCurve: [{ speed: 3000 rpm, torque: 300 N m }, { speed: 4000 rpm, torque: 310 N m }] }",
      { field: "targets.torqueCurve" },
    ],
    [
      "power for torque in a curve",
      "targets: { torqueCurve: [{ speed: 3000 rpm, torque: 90 kW }, { speed: 4000 rpm, torque: 310 N m }, { speed: 5000 rpm, torque: 310 N m }] }",
      { field: "targets.torqueCurve.0.torque" },
    ],
    ["a tab", "block:\n\tbore: 88 mm", { line: 4, column: 1 }],
    [
      "pressure that may be gauge",
      "induction: { manifoldPressure: 1.9 bar }",
      { field: "induction.manifoldPressure" },
    ],
    ["transposed letters", "feul: { kind: petrol }", { didYouMean: "fuel" }],
    [
      "tolerance in a table",
      "connectingRod: { bigEndOutline: [{ along: 33 mm towards cap, across: 0 mm }, { along: 0 mm, across: 38 mm ± 0.5 }, { along: 60 mm towards pin, across: 10 mm }] }",
      { field: "connectingRod.bigEndOutline.1.across", expected: "the value alone: 38 mm" },
    ],
    [
      "column that the table does not have",
      "connectingRod: { bigEndOutline: [{ along: 33 mm towards cap, across: 0 mm, radius: 2 mm }, { along: 0 mm, across: 38 mm }, { along: 60 mm towards pin, across: 10 mm }] }",
      { field: "connectingRod.bigEndOutline.0.radius" },
    ],
    [
      "outline without a word",
      "connectingRod: { bigEndOutline: [{ along: 3 mm, across: 1 mm }, { along: 3 mm, across: 1 mm }, { along: 3 mm, across: 1 mm }] }",
      { field: "connectingRod.bigEndOutline.0.along" },
    ],
  ])("%s", (_, body, expected) => {
    const problems = refused(body);
    expect(problems[0]).toMatchObject(expected);
    expect(problems[0]?.found).not.toBe("");
    expect(problems[0]?.expected).not.toBe("");
  });

  it("reports all problems at once, in file order", () => {
    const problems = refused("crankshaft:\n  strok: 94 mm\nblock:\n  bore: 88.5\n  deckHeight: tall\n");
    expect(problems.map((problem) => problem.line)).toEqual([4, 6, 7]);
  });
  it("asks for the format version and a name", () => {
    const problems = problemsOf(() => readBuildText("block: {}", "b.yaml"));
    expect(problems.map((problem) => problem.field).sort()).toEqual(["name", "trialfit"]);
  });
  it("survives hostile input quickly", () => {
    const bomb = `trialfit: "1"\nname: x\na: &a [1,1,1,1,1,1,1,1]\n${"bcdefghi"
      .split("")
      .map((c, i) => `${c}: &${c} [${`*${"abcdefgh"[i]},`.repeat(8)}]`)
      .join("\n")}`;
    const hostile: readonly [string, string, RegExp][] = [
      ["alias bomb", bomb, /aliases|alias/],
      ["deep nesting", `${"[".repeat(50000)}`, /nested/],
      [
        "deep block nesting",
        Array.from({ length: 3000 }, (_, i) => `${" ".repeat(i)}a:`)
          .join("\n")
          .slice(0, 400_000),
        /./,
      ],
      ["too long", "a".repeat(600_000), /characters/],
      ["binary", "\u0000\u0001\u0002", /./],
      ["not a map", "- 1\n- 2", /./],
      ["nothing", "", /./],
    ];
    for (const [what, text, message] of hostile) {
      const started = Date.now();
      const problems = problemsOf(() => readBuildText(text, "b.yaml"));
      expect(problems.length, what).toBeGreaterThan(0);
      expect(`${problems[0]?.found} ${problems[0]?.expected}`, what).toMatch(message);
      expect(Date.now() - started, what).toBeLessThan(5000);
    }
  });
  it("refuses polluted and circular plain data", () => {
    const circular: Record<string, unknown> = { trialfit: 1, name: "x" };
    circular.block = circular;
    expect(problemsOf(() => readBuild(circular))[0]?.found).toMatch(/circular/);
    expect(problemsOf(() => readBuild(JSON.parse('{"__proto__":{"a":1}}')))[0]?.found).toMatch(/__proto__/);
    expect(
      problemsOf(() => readBuild({ trialfit: 1, name: "x", block: { bore: Number.NaN } }))[0]?.field,
    ).toBe("block.bore");
    expect(problemsOf(() => readBuild(null)).length).toBe(1);
  });
});
