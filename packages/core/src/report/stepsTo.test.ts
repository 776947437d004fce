import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { readBuildText } from "../read/readBuild.ts";
import { Nominals } from "../trace/Nominals.ts";
import { type DerivationStep, stepsTo } from "./stepsTo.ts";

const demo = (name: string) =>
  new Nominals(readBuildText(readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8")));

function stepsIn(nominals: Nominals, id: string): readonly DerivationStep[] {
  const derived = stepsTo(nominals, id);
  if (derived.state !== "value") throw new Error(`${id} is ${derived.state}`);
  return derived.steps;
}

describe("how a quantity comes about", () => {
  it("goes from entered sizes to it, each step after those that it needs, in every demo build", () => {
    let [values, steps] = [0, 0];
    for (const name of ["larkspur-hill", "harrow-eight"]) {
      const nominals = demo(name);
      for (const id of quantities.keys()) {
        const derived = stepsTo(nominals, id);
        const size = nominals.size(id);
        if (derived.state !== "value") {
          expect(size, `${name}: ${id}`).toBeUndefined();
          expect(derived.state === "missing").toBe(nominals.lacking(id).length > 0);
          continue;
        }
        values += 1;
        const before = new Set<string>();
        for (const step of derived.steps) {
          for (const { path, value, written } of step.inputs) {
            expect(value).toBe(nominals.size(path) ?? value);
            if (quantities.has(path)) expect(before, `${id}: ${path}`).toContain(path);
            else expect(written).toBeDefined();
          }
          expect(step.formula ?? step.method).toBeDefined();
          before.add(step.id);
          steps += 1;
        }
        const last = derived.steps.at(-1)!;
        expect(last.id).toBe(id);
        if (Number.isFinite(last.value)) expect(last.value).toBe(size);
        expect(before.size).toBe(derived.steps.length);
      }
    }
    expect(values).toBeGreaterThan(700);
    expect(steps).toBeGreaterThan(values);
  });
  it("says what was written, what was taken, and by which way", () => {
    const nominals = new Nominals(
      readBuildText(`trialfit: "1"
name: Test
block: { deckHeight: 227.00 mm ± 0.05 }
crankshaft: { stroke: 90 mm }
connectingRod: { length: 150 mm }
piston: { compressionHeight: 31.2 mm }
`),
    );
    const last = stepsIn(nominals, "deckClearance").at(-1)!;
    expect(last.inputs.find(({ path }) => path === "block.deckHeight")).toMatchObject({
      written: "227.00 mm ± 0.05",
      assumed: false,
      value: 0.227,
    });
    expect(last.value).toBeCloseTo(0.0008, 12);
    expect(stepsTo(nominals, "squishGap")).toMatchObject({
      state: "missing",
      missing: ["headGasket.compressedThickness"],
    });
    const routed = stepsIn(demo("larkspur-hill"), "compressionRatio").flatMap(({ inputs }) => inputs);
    expect(routed.length).toBeGreaterThan(3);
  });
  it("says why it cannot be", () => {
    const short = readBuildText(`trialfit: "1"
name: Test
crankshaft: { stroke: 150 mm }
connectingRod: { length: 70 mm }
piston: { compressionHeight: 31.2 mm }
block: { bore: 88 mm, cylinders: "4", deckHeight: 227 mm }
`);
    const states = [...quantities.keys()].map((id) => stepsTo(new Nominals(short), id));
    const impossible = states.find(({ state }) => state === "impossible");
    expect(impossible).toMatchObject({ reason: expect.stringMatching(/rod|throw|stroke/i) });
  });
  it("refuses what is no quantity", () =>
    expect(() => stepsTo(demo("larkspur-hill"), "nothing")).toThrow(/nothing/));
});
