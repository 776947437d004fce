import { readFileSync } from "node:fs";
import { evaluate } from "mathjs";
import { factType, Nominals, quantities, readBuildText, stepsTo, unitOf } from "trialfit";
import { describe, expect, it } from "vitest";
import { formulaUnit, printInput, printResult, readInput } from "./inputValue.ts";

const demo = (id: string) =>
  readFileSync(new URL(`../../../packages/core/demo/${id}.yaml`, import.meta.url), "utf8");

/** What a reader has in hand who converts a unit by its decimal factor and knows nothing of the pi that it hides. */
const asRead = (si: number, unit: string) => (unitOf(unit).pi === 1 ? si / Math.PI : si);

describe("formulas in numbers", () => {
  it("can be worked again with the numbers as they are printed, every one", () => {
    let turning = 0;
    for (const id of ["harrow-eight", "larkspur-hill"]) {
      const nominals = new Nominals(readBuildText(demo(id)));
      for (const quantity of quantities.values()) {
        const derived = stepsTo(nominals, quantity.id);
        if (quantity.formula === undefined || derived.state !== "value") continue;
        const { inputs, value, formula } = derived.steps.at(-1)!;
        const given = Object.fromEntries(
          inputs.map((one) => [one.symbol, asRead(one.value, formulaUnit(quantity, one.symbol))]),
        );
        const result = printResult(quantity, value) === undefined ? asRead(value, quantity.unit) : value;
        const again = evaluate(formula!, given) as number;
        expect(Math.abs(again - result), quantity.id).toBeLessThanOrEqual(1e-9 * Math.abs(result) + 1e-12);
        if (inputs.some(({ path }) => (factType(path) as { unit?: string }).unit === "rpm")) turning += 1;
      }
    }
    expect(turning).toBeGreaterThan(30);
  });

  it("have a speed of rotation in radians, the angle too, and say what people read", () => {
    const speed = quantities.get("meanPistonSpeed")!;
    const si = (8100 * Math.PI) / 30;
    expect(printInput(speed, "n", si)).toBe("848.23 rad/s");
    expect(readInput(speed, "n", si)).toBe("8100 rpm");
    expect(readInput(speed, "S_0", 0.094)).toBeUndefined();
    const opening = quantities.get("exhaustOpening")!;
    expect(printInput(opening, "theta_ce", Math.PI / 2)).toBe("1.5708 rad");
    expect(printResult(opening, Math.PI / 2)).toBe("1.5708 rad");
  });

  it("keep turns and degrees where every number is one, or the result a ratio of two", () => {
    const si = (8100 * Math.PI) / 30;
    expect(printInput(quantities.get("overspeedRatio")!, "n", si)).toBe("8100 rpm");
    expect(readInput(quantities.get("overspeedRatio")!, "n", si)).toBeUndefined();
    const separation = quantities.get("lobeSeparation")!;
    expect(printInput(separation, "theta_ci", Math.PI / 2)).toBe("90 deg");
    expect(printResult(separation, Math.PI / 2)).toBeUndefined();
  });
});
