import { fc, test } from "@fast-check/vitest";
import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { evaluate, type Report, readBuild } from "trialfit";
import { describe, expect, it } from "vitest";

const rule: RuleFile = {
  id: "clearance-for-tests",
  title: "The piston has between 0.05 and 0.07 mm of room in its bore",
  system: "pistons",
  parts: ["block", "piston"],
  stages: ["choose", "trial-assembly"],
  requires: {
    all: [
      { fact: "pistonToBoreClearance", operator: "greaterThanInclusive", value: "0.05 mm" },
      { fact: "pistonToBoreClearance", operator: "lessThanInclusive", value: "0.07 mm" },
    ],
  },
  otherwise: { work: "machine", weight: "stop", do: "Hone it." },
  because: "Only for tests of the evaluator.",
  sources: [{ id: "definition" }],
  examples: [],
} as unknown as RuleFile;
// Without examples the schema refuses it: two that are true of it.
const rules: readonly RuleFile[] = [
  {
    ...rule,
    examples: [
      { name: "inside", given: { pistonToBoreClearance: "0.06 mm" }, verdict: "holds" },
      { name: "missing", given: {}, verdict: "unknown" },
    ],
  },
];

const micron = (over: number, base: number) => `${(base + over / 1000).toFixed(4)} mm`;
const bores = (list: readonly number[]) =>
  Object.fromEntries(list.map((over, index) => [String(index + 1), micron(over, 90)]));
const pistons = (list: readonly number[]) =>
  Object.fromEntries(list.map((over, index) => [String(index + 1), micron(over, 89.94)]));

const engine = (bore: unknown, diameter: unknown) => ({
  trialfit: "1",
  name: "Bench four (invented)",
  block: { layout: "inline", cylinders: "4", bore },
  piston: { diameter },
});
const exact = { uncertainty: "0 mm" };
const check = (bore: unknown, diameter: unknown, options = {}): Promise<Report> =>
  evaluate(readBuild(engine(bore, diameter)), { rules, ...options });

describe("dimensions measured cylinder by cylinder", () => {
  it("are judged at each, and the worst stands for the rule with its place", async () => {
    const report = await check({ ...exact, readings: bores([0, 0, 15, 0]) }, "89.94 mm ± 0");
    const [verdict] = report.verdicts;
    expect(verdict).toMatchObject({ verdict: "fails", at: "cylinder 3" });
    expect(verdict!.places!.map((place) => place.verdict)).toEqual(["holds", "holds", "fails", "holds"]);
    expect(verdict!.remedy).toBeDefined();
  });
  it("leave a rule unknown at a cylinder that was not measured and of which nothing else is known", async () => {
    const report = await check({ ...exact, readings: bores([0, 0, 5]) }, "89.94 mm ± 0");
    expect(report.verdicts[0]).toMatchObject({
      verdict: "unknown",
      at: "cylinder 4",
      missing: ["block.bore"],
    });
    const known = await check(
      { value: "90 mm ± 0.005", ...exact, readings: bores([0, 0, 5]) },
      "89.94 mm ± 0",
    );
    expect(known.verdicts[0]).toMatchObject({ verdict: "holds" });
  });
  it("stand in the report as one dimension with the band of all", async () => {
    const { fields } = await check({ ...exact, readings: bores([0, 2, 5, 1]) }, "89.94 mm ± 0");
    const bore = fields.find(({ path }) => path === "block.bore")!;
    expect(bore.provenance).toBe("measured");
    expect([bore.low, bore.high]).toEqual([0.09, 0.090005]);
  });
  test.prop([fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 4, maxLength: 4 })], { numRuns: 25 })(
    "are judged as four builds of one size each would be",
    async (over) => {
      const together = await check({ ...exact, readings: bores(over) }, "89.94 mm ± 0.002");
      for (const [index, one] of over.entries()) {
        const alone = await check(`${micron(one, 90)} ± 0`, "89.94 mm ± 0.002");
        expect(together.verdicts[0]!.places![index]!.verdict).toBe(alone.verdicts[0]!.verdict);
      }
    },
  );
});

describe("a bore gauged at three heights and in two directions", () => {
  const at = (along: number, across: number) => ({ along: micron(along, 90), across: micron(across, 90) });
  const straight = { top: at(4, 6), middle: at(2, 4), bottom: at(0, 2) };
  const form = ruleFiles.filter(({ id }) => ["bore-taper-small", "bores-round"].includes(id));
  const gauged = async (second: object, uncertainty: string) => {
    const build = {
      trialfit: "1",
      name: "Bench two (invented)",
      use: "circuit",
      induction: { kind: "naturally-aspirated" },
      block: {
        layout: "inline",
        cylinders: "2",
        bore: { uncertainty, readings: { "1": straight, "2": second } },
      },
    };
    const { verdicts } = await evaluate(readBuild(build), { rules: form });
    return Object.fromEntries(verdicts.map((one) => [one.rule, one]));
  };
  it("gives its taper and out-of-round to their rules, cylinder by cylinder", async () => {
    const tapered = await gauged({ top: at(12, 14), middle: at(6, 8), bottom: at(0, 2) }, "0 mm");
    expect(tapered["bores-round"]).toMatchObject({ verdict: "holds" });
    expect(tapered["bore-taper-small"]).toMatchObject({ verdict: "fails", at: "cylinder 2" });
    expect(tapered["bore-taper-small"]!.places!.map(({ verdict }) => verdict)).toEqual(["holds", "fails"]);
    expect(tapered["bore-taper-small"]!.remedy).toMatch(/tapers by 0\.012 mm; 0\.008 mm is the most/);
    const oval = await gauged({ top: at(0, 10), middle: at(0, 8), bottom: at(0, 6) }, "0 mm");
    expect(oval["bore-taper-small"]).toMatchObject({ verdict: "holds" });
    expect(oval["bores-round"]).toMatchObject({ verdict: "fails", at: "cylinder 2" });
  });
  it("leaves them open where the gauge is too coarse, and unknown where one height was taken", async () => {
    const coarse = await gauged({ top: at(7, 9), middle: at(4, 5), bottom: at(0, 2) }, "0.002 mm");
    expect(coarse["bore-taper-small"]).toMatchObject({ verdict: "open", at: "cylinder 2" });
    expect(coarse["bore-taper-small"]!.remedy).toMatch(/0\.007 mm ± 0\.00283 mm/);
    const once = await gauged({ middle: at(4, 5) }, "0 mm");
    expect(once["bore-taper-small"]).toMatchObject({
      verdict: "unknown",
      at: "cylinder 2",
      missing: ["block.boreTaper"],
    });
    expect(once["bores-round"]).toMatchObject({ verdict: "holds" });
  });
});

describe("journals gauged at two places and in two directions", () => {
  const at = (base: number, along: number, across: number) => ({
    along: micron(along, base),
    across: micron(across, base),
  });
  const gauged = (base: number, taper: number, oval: number) => ({
    front: at(base, 0, oval),
    rear: at(base, taper, taper + oval),
  });
  const rules = ruleFiles.filter(({ id }) => id === "journals-round-and-straight");
  const journals = async (mains: readonly object[], pins: readonly object[], more = {}) => {
    const readings = (list: readonly object[]) =>
      Object.fromEntries(list.map((one, index) => [String(index + 1), one]));
    const { verdicts } = await evaluate(
      readBuild({
        trialfit: "1",
        name: "Bench one (invented)",
        use: "circuit",
        induction: { kind: "naturally-aspirated" },
        block: { layout: "inline", cylinders: "2", mainBearings: "3" },
        crankshaft: {
          rodsPerPin: "1",
          mainJournalDiameter: { uncertainty: "0 mm", readings: readings(mains) },
          crankpinDiameter: { uncertainty: "0 mm", readings: readings(pins) },
          ...more,
        },
      }),
      { rules },
    );
    return verdicts[0]!;
  };
  const [main, pin] = [gauged(60, 3, 2), gauged(48, 1, 3)];
  it("give taper and out-of-round of each main journal and of the worst crankpin to their rule", async () => {
    expect(await journals([main, main, main], [pin, pin])).toMatchObject({ verdict: "holds" });
    const tapered = await journals([main, gauged(60, 6, 0), main], [pin, pin]);
    expect(tapered).toMatchObject({ verdict: "fails", at: "main bearing 2" });
    expect(tapered.places!.map(({ verdict }) => verdict)).toEqual(["holds", "fails", "holds"]);
    expect(await journals([main, main, main], [pin, gauged(48, 0, 6)])).toMatchObject({ verdict: "fails" });
  });
  it("leave the rule unknown where a journal was gauged at one place, unless its form is entered", async () => {
    const once = { middle: at(60, 0, 2) };
    expect(await journals([main, once, main], [pin, pin])).toMatchObject({
      verdict: "unknown",
      at: "main bearing 2",
      missing: ["crankshaft.mainJournalTaper"],
    });
    expect(await journals([main, main, main], [pin, { middle: at(48, 0, 3) }])).toMatchObject({
      verdict: "unknown",
      missing: ["crankshaft.crankpinTaper"],
    });
    const entered = { mainJournalTaper: "0.002 mm ± 0" };
    expect(await journals([main, once, main], [pin, pin], entered)).toMatchObject({ verdict: "holds" });
  });
});

describe("main bearing housings gauged at two places and in two directions", () => {
  const rules = ruleFiles.filter(({ id }) => id === "main-housings-round-and-straight");
  const gauged = (taper: number, oval: number) => ({
    front: { along: micron(0, 70), across: micron(oval, 70) },
    rear: { along: micron(taper, 70), across: micron(taper + oval, 70) },
  });
  const housings = async (list: readonly object[]) => {
    const readings = Object.fromEntries(list.map((one, index) => [String(index + 1), one]));
    const block = { layout: "inline", cylinders: "2", mainBearings: "3" };
    const { verdicts } = await evaluate(
      readBuild({
        trialfit: "1",
        name: "Bench one (invented)",
        use: "circuit",
        block: { ...block, mainHousingBore: { uncertainty: "0 mm", readings } },
      }),
      { rules },
    );
    return verdicts[0]!;
  };
  it("give taper and out-of-round of each housing to their rule", async () => {
    const good = gauged(4, 6);
    expect(await housings([good, good, good])).toMatchObject({ verdict: "holds" });
    const oval = await housings([good, good, gauged(0, 10)]);
    expect(oval).toMatchObject({ verdict: "fails", at: "main bearing 3" });
    expect(oval.places!.map(({ verdict }) => verdict)).toEqual(["holds", "holds", "fails"]);
    expect(oval.remedy).toMatch(/0\.01 mm out of round and tapers by 0 mm/);
    expect(await housings([good, gauged(9, 2), good])).toMatchObject({
      verdict: "fails",
      at: "main bearing 2",
    });
  });
  it("leave it unknown where a housing was gauged at one place", async () => {
    const once = { middle: { along: micron(0, 70), across: micron(3, 70) } };
    expect(await housings([gauged(2, 2), once, gauged(2, 2)])).toMatchObject({
      verdict: "unknown",
      at: "main bearing 2",
      missing: ["block.mainHousingTaper"],
    });
  });
});

describe("parts that may change places", () => {
  const words = async (bore: readonly number[], piston: readonly number[]) => {
    const each = await check({ ...exact, readings: bores(bore) }, { ...exact, readings: pistons(piston) });
    return each.verdicts[0]!.places!.map((place) => place.verdict);
  };
  it("are exchanged where that settles a finding, with the fewest moves", async () => {
    const report = await check(
      { ...exact, readings: bores([0, 15, 0, 0]) },
      { ...exact, readings: pistons([0, 0, 12, 0]) },
    );
    expect(report.verdicts[0]!.verdict).toBe("fails");
    expect(report.exchanges).toEqual([
      {
        part: "piston",
        per: "cylinder",
        moves: [
          { from: 2, to: 3 },
          { from: 3, to: 2 },
        ],
        betters: [{ rule: rule.id, before: "fails", after: "holds" }],
      },
    ]);
  });
  it("stay where nothing is won", async () => {
    const report = await check(
      { ...exact, readings: bores([0, 30, 0, 0]) },
      { ...exact, readings: pistons([0, 0, 1, 0]) },
    );
    expect(report.verdicts[0]!.verdict).toBe("fails");
    expect(report.exchanges).toEqual([]);
  });
  const sizes = fc.array(fc.integer({ min: -18, max: 18 }), { minLength: 4, maxLength: 4 });
  test.prop([sizes, sizes], { numRuns: 30 })(
    "are placed as well as the best of all 24 ways to place them",
    async (bore, piston) => {
      // Half a micron apart from every limit, so that no rounding decides.
      const good = (b: number, p: number) => b - p - 0.5 > -10 && b - p - 0.5 < 10;
      const halves = pistons(piston.map((one) => one + 0.5));
      const orders = permutations([0, 1, 2, 3]);
      const count = (order: readonly number[]) =>
        order.filter((item, place) => !good(bore[place]!, piston[item]!)).length;
      const fewest = Math.min(...orders.map(count));
      const report = await check({ ...exact, readings: bores(bore) }, { ...exact, readings: halves });
      const [exchange] = report.exchanges;
      // Only an exchange that clears the worst place of the rule is worth proposing.
      expect(exchange !== undefined).toBe(fewest === 0 && count([0, 1, 2, 3]) > 0);
      if (exchange === undefined) return;
      const order = [0, 1, 2, 3];
      for (const { from, to } of exchange.moves) order[to - 1] = from - 1;
      expect(count(order)).toBe(0);
      expect(
        await words(
          bore,
          order.map((item) => piston[item]! + 0.5),
        ),
      ).toEqual(Array(4).fill("holds"));
    },
  );
});

function permutations(items: readonly number[]): readonly (readonly number[])[] {
  return items.length === 0
    ? [[]]
    : items.flatMap((item) =>
        permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
      );
}

describe("an open verdict says what would settle it", () => {
  const inMm = (report: Report, path: string) => {
    const { settlement } = report.verdicts[0]!;
    const one = settlement?.measure.find((measure) => measure.path === path);
    return one === undefined ? undefined : one.uncertainty * 1000;
  };
  test.prop(
    [fc.integer({ min: -14, max: 14 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 })],
    { numRuns: 60 },
  )("and measuring so well does settle it", async (over, wide, narrow) => {
    const bore = `${micron(over, 90)} ± ${wide / 1000}`;
    const piston = `89.94 mm ± ${narrow / 1000}`;
    const report = await check(bore, piston);
    const [verdict] = report.verdicts;
    const { settlement } = verdict!;
    if (verdict!.verdict !== "open") expect(settlement).toBeUndefined();
    if (settlement === undefined) return;
    if (settlement.provided === "clear-of-limit") {
      expect(Math.abs(over)).toBe(10);
      return;
    }
    const measured = (path: string, text: string, value: string) => {
      const width = inMm(report, path);
      return width === undefined ? text : { value, uncertainty: `${width.toFixed(9)} mm` };
    };
    const after = await check(
      measured("block.bore", bore, micron(over, 90)),
      measured("piston.diameter", piston, "89.94 mm"),
    );
    expect(after.verdicts[0]!.verdict).toBe(settlement.becomes);
  });
  it("and how well the dimension that matters must be measured", async () => {
    const report = await check("90.006 mm ± 0.008", "89.94 mm ± 0.0005");
    expect(report.verdicts[0]!.verdict).toBe("open");
    expect(report.verdicts[0]!.settlement!.measure.map(({ path }) => path)).toEqual(["block.bore"]);
    expect(inMm(report, "block.bore")).toBeGreaterThan(0.003);
    expect(inMm(report, "block.bore")).toBeLessThanOrEqual(0.0035);
  });
  it("and that only what comes out clear of it does, when it lies on its limit", async () => {
    const report = await check("90.01 mm ± 0.005", "89.94 mm ± 0");
    expect(report.verdicts[0]).toMatchObject({ verdict: "open" });
    expect(report.verdicts[0]!.settlement).toMatchObject({
      provided: "clear-of-limit",
      measure: [{ path: "block.bore" }],
    });
  });
});

describe("the stage of a build", () => {
  it("asks for measured sizes where the parts are on the bench", async () => {
    const [bore, piston] = ["90 mm ± 0.002", "89.94 mm ± 0.002"];
    const word = async (stage: string | undefined, b: unknown, p: unknown) =>
      (await check(b, p, stage === undefined ? {} : { stage })).verdicts[0]!;
    expect((await word(undefined, bore, piston)).verdict).toBe("holds");
    expect((await word("choose", bore, piston)).verdict).toBe("holds");
    const onPaper = await word("trial-assembly", bore, piston);
    expect(onPaper).toMatchObject({ verdict: "open", unmeasured: ["block.bore", "piston.diameter"] });
    expect(onPaper.remedy).toBeUndefined();
    expect(onPaper.settlement).toMatchObject({ becomes: "holds" });
    const half = await word("trial-assembly", { value: "90 mm", uncertainty: "0.002 mm" }, piston);
    expect(half).toMatchObject({ verdict: "open", unmeasured: ["piston.diameter"] });
    const measured = await word(
      "trial-assembly",
      { value: "90 mm", uncertainty: "0.002 mm" },
      { value: "89.94 mm", uncertainty: "0.002 mm" },
    );
    expect(measured.verdict).toBe("holds");
  });
  it("lets a failure on paper stand", async () => {
    const report = await check("90.05 mm ± 0.002", "89.94 mm ± 0.002", { stage: "trial-assembly" });
    expect(report.verdicts[0]!.verdict).toBe("fails");
    expect(report.verdicts[0]!.unmeasured).toBeUndefined();
  });
});
