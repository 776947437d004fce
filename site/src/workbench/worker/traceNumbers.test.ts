import { readFileSync } from "node:fs";
import { formatNumber, Nominals, quantities, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { prettyUnits } from "../../data/prettyUnits.ts";
import type { FromDesk } from "../deskProtocol.ts";
import { Desk } from "./Desk.ts";
import { traceNumbers } from "./traceNumbers.ts";

const text = readFileSync(
  new URL("../../../../packages/core/demo/larkspur-hill.yaml", import.meta.url),
  "utf8",
);
const ground = { text, file: "larkspur-hill.yaml" };

describe("how numbers of a build come about", () => {
  it("can be shown of every quantity, its value last, every step before named by its number", () => {
    const nominals = new Nominals(readBuildText(text));
    const traces = traceNumbers({ ground, ids: [...quantities.keys()] });
    let count = 0;
    for (const [id, trace] of Object.entries(traces)) {
      if (trace.state === "none") {
        expect(nominals.size(id)).toBeUndefined();
        continue;
      }
      count += 1;
      const { unit, decimals } = quantities.get(id)!;
      const size = nominals.size(id);
      if (size !== undefined)
        expect(trace.steps.at(-1)).toMatchObject({
          id,
          value: prettyUnits(formatNumber(size, unit, { decimals })),
        });
      for (const [at, step] of trace.steps.entries()) {
        expect(step.formula ?? step.method).toBeDefined();
        for (const { step: before, path } of step.inputs) {
          if (before === undefined) expect(path).toMatch(/^\w+(\.\w+)?$/);
          else expect(before).toBeLessThanOrEqual(at);
        }
      }
    }
    expect(count).toBeGreaterThan(300);
  });
  it("has the formula, and the same with the numbers of this build", () => {
    const trace = traceNumbers({ ground, ids: ["deckClearance"] }).deckClearance;
    if (trace?.state !== "value") throw new Error(`it is ${trace?.state}`);
    const last = trace.steps.at(-1)!;
    const deck = last.inputs.find(({ path }) => path === "block.deckHeight")!;
    expect(deck.text).toMatch(/mm/);
    expect(last.formula).toContain("<math");
    expect(last.numbers).toContain(`<mn>${Number.parseFloat(deck.text)}`);
    expect(last.formula).not.toContain(`<mn>${Number.parseFloat(deck.text)}`);
  });
  it("is answered at the desk for the text that is asked about, and says what is missing", async () => {
    const told: FromDesk[] = [];
    const desk = new Desk((message) => told.push(structuredClone(message)));
    const other = { text: 'trialfit: "1"\nname: Bare\n', file: "bare.yaml" };
    await desk.take({ kind: "trace", errand: 1, ground, ids: ["deckClearance", "nothing"] });
    await desk.take({ kind: "trace", errand: 2, ground: other, ids: ["deckClearance"] });
    expect(told.map(({ errand, kind }) => [errand, kind])).toEqual([
      [1, "traced"],
      [2, "traced"],
    ]);
    const [first, second] = told.map((one) => (one.kind === "traced" ? one.traces : {}));
    expect(Object.keys(first!)).toEqual(["deckClearance"]);
    expect(second!.deckClearance).toMatchObject({
      state: "none",
      why: expect.stringMatching(/needs .*stroke/i),
    });
  });
});
