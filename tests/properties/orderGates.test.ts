import { ruleFiles } from "@trialfit/rules";
import { type Build, compileRules, quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { isReleased } from "../../packages/core/src/papers/gates.ts";
import { makePaperSource } from "../../packages/core/src/papers/makePaperSource.ts";
import { orderLines } from "../../packages/core/src/papers/sheets/orderList.ts";
import { assemblySteps } from "../../packages/core/src/papers/tables/assemblySteps.ts";
import { operatedFields } from "../../packages/core/src/papers/tables/operatedFields.ts";
import { operations } from "../../packages/core/src/papers/tables/operations.ts";
import { orderGates } from "../../packages/core/src/papers/tables/orderGates.ts";
import { parts } from "../../packages/core/src/read/buildSchema.ts";
import { fields } from "../../packages/core/src/read/fieldCatalog.ts";
import { generateBuild } from "../catalog/generateBuilds.ts";
import { generator } from "../differential/generator.ts";

const BUILDS = 120;
/** Stop rules whose quantities take no search, so that many builds can be looked at. */
const rules = compileRules(ruleFiles)
  .filter(
    ({ file, facts }) =>
      file.otherwise.weight === "stop" && facts.every((fact) => quantities.get(fact)?.shape !== "guarded"),
  )
  .map(({ file }) => file);

/** A build some of whose parts are in hand, and most of their dimensions measured. */
function partlyMeasured(build: Build, random: () => number): Build {
  const inHand = new Map(parts.map(({ spec }) => [spec.key, random() < 0.5]));
  const values = new Map(build.values);
  for (const [path, value] of values) {
    if (value.kind !== "dimension") continue;
    const measured = inHand.get(path.split(".")[0]!) === true && random() < 0.85;
    values.set(path, { ...value, provenance: measured ? "measured" : "data-sheet" });
  }
  return { ...build, values };
}

describe("order gates", () => {
  it("release no line that rests on a dimension that was not measured", async () => {
    const random = generator(20_261_130);
    const counts = { released: 0, held: 0, checked: 0 };
    for (let number = 0; number < BUILDS; number += 1) {
      const drawn = generateBuild(20_261_131, number);
      const source = await makePaperSource(partlyMeasured(drawn, random), { rules });
      for (const { part, gate } of orderLines(source)) {
        counts[isReleased(gate) ? "released" : "held"] += 1;
        if (!isReleased(gate)) continue;
        const open = source.report.verdicts
          .filter(
            ({ verdict, weight, parts: on }) =>
              verdict === "open" && weight === "stop" && on.includes(part.id),
          )
          .flatMap(({ settlement }) => settlement?.measure ?? [])
          .map(({ path }) => path)
          .filter(
            (path) =>
              !path.startsWith(`${part.key}.`) &&
              fields.get(path)?.part?.bought !== false &&
              path.includes("."),
          );
        for (const path of [...(orderGates[part.key]?.measured ?? []), ...open]) {
          const value = source.values.get(path);
          expect(value?.kind === "dimension" && value.provenance, `${part.key} in ${number}: ${path}`).toBe(
            "measured",
          );
          counts.checked += 1;
        }
        for (const path of orderGates[part.key]?.fixed ?? []) expect(source.values.has(path)).toBe(true);
      }
    }
    console.log(
      `order lines: ${counts.released} released, ${counts.held} held, ${counts.checked} measured fields seen`,
    );
    expect(counts.released).toBeGreaterThan(300);
    expect(counts.held).toBeGreaterThan(300);
    expect(counts.checked).toBeGreaterThan(100);
  }, 600_000);

  it("let pass only what a person lets pass, by name", async () => {
    const build = generateBuild(20_261_131, 1);
    const held = orderLines(await makePaperSource(build, { rules })).filter(({ gate }) => !isReleased(gate));
    expect(held.length).toBeGreaterThan(0);
    const key = held[0]!.part.key;
    const overrides = new Map([[`order-list ${key}`, { by: "A. N.", because: "the customer waits" }]]);
    const passed = orderLines(await makePaperSource(build, { rules, overrides }));
    expect(passed.find(({ part }) => part.key === key)!.gate.override).toEqual({
      by: "A. N.",
      because: "the customer waits",
    });
    for (const { part, gate } of passed) if (part.key !== key) expect(gate.override).toBeUndefined();
  }, 120_000);
});

describe("tables of the papers", () => {
  it("name fields and parts that there are", () => {
    const paths = [
      ...Object.values(orderGates).flatMap(({ fixed, measured }) => [...fixed, ...measured]),
      ...Object.entries(operations).flatMap(([path, { finish }]) => [path, ...finish]),
      ...operatedFields,
    ];
    expect(paths.filter((path) => !fields.has(path))).toEqual([]);
    expect(paths.length).toBeGreaterThan(80);
    const keys = new Set(parts.map(({ spec }) => spec.key));
    const named = [
      ...Object.keys(orderGates),
      ...Object.values(operations).flatMap(({ to }) => (to === undefined ? [] : [to])),
      ...assemblySteps.flatMap(({ parts: own }) => own),
    ];
    expect(named.filter((key) => !keys.has(key))).toEqual([]);
  });

  it("have every bought part go in at a step, once", () => {
    const going = assemblySteps.flatMap(({ parts: own }) => own);
    const bought = parts.filter(({ spec }) => spec.bought !== false).map(({ spec }) => spec.key);
    expect(bought.filter((key) => !going.includes(key))).toEqual([]);
    expect(new Set(going).size).toBe(going.length);
  });
});
