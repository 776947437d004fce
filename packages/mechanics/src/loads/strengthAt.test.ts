import { fc, test } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, MPa, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { type StrengthCurve, strengthAt } from "./strengthAt.ts";

const alloy: StrengthCurve = { temperatures: [293, 373, 473], strengths: [372 * MPa, 356 * MPa, 260 * MPa] };

test("examples: at the points themselves, and half way", () => {
  for (const [index, at] of alloy.temperatures.entries())
    nearly(strengthAt(alloy, at), alloy.strengths[index]!, 1e-15);
  nearly(strengthAt(alloy, 423), 308 * MPa);
  nearly(strengthAt(alloy, 333), 364 * MPa);
});

const falling = fc
  .array(fc.tuple(between(5, 80), between(0, 60)), { minLength: 2, maxLength: 8 })
  .map((steps): StrengthCurve => {
    let [temperature, strength] = [293, 900];
    const points = steps.map(([warmer, weaker]) => {
      temperature += warmer;
      strength -= weaker;
      return [temperature, strength * MPa] as const;
    });
    return { temperatures: points.map(([at]) => at), strengths: points.map(([, of]) => of) };
  });

test.prop([falling, between(0, 1), between(0, 1)])("falls wherever its table falls", (curve, one, other) => {
  const [from, to] = [curve.temperatures[0]!, curve.temperatures.at(-1)!];
  const at = (share: number) => Math.min(to, from + share * (to - from));
  const [cool, warm] = [Math.min(one, other), Math.max(one, other)];
  expect(strengthAt(curve, at(warm))).toBeLessThanOrEqual(strengthAt(curve, at(cool)) * (1 + 1e-12));
});

test("boundary: nothing beyond the table, and no table that is none", () => {
  refuses(() => strengthAt(alloy, 292.9), "temperature");
  refuses(() => strengthAt(alloy, 473.1), "temperature");
  refuses(() => strengthAt({ ...alloy, temperatures: [293, 293, 473] }, 300), "temperatures");
  refuses(() => strengthAt({ ...alloy, strengths: [1, 2] }, 300), "strengths");
  refuses(() => strengthAt({ temperatures: [293], strengths: [1] }, 293), "temperatures");
  refusesNonFinite(strengthAt, alloy, 400);
});
