import { fromSi, toSi, unitTable } from "trialfit";
import { expect, test } from "vitest";
import { exactFactor, exactNumber } from "./exactFactor.ts";
import { spellings } from "./spellings.ts";
import { unitKinds } from "./unitKinds.ts";

const one = { numerator: 1n, denominator: 1n };

test("every unit belongs to one kind, and its printed factor is the one that is used", () => {
  let seen = 0;
  for (const { units, si } of unitKinds)
    for (const unit of units) {
      const text = exactFactor(unit, si);
      const [size = ""] = text.split(/ |;/);
      const quotient = size.replace("π", String(Math.PI)).replace(/^(\d+)(3\.14)/, "$1*$2");
      const value = quotient
        .split("/")
        .map(Number)
        .reduce((a, b) => a / b);
      const step = toSi(one, unit) - toSi({ numerator: 0n, denominator: 1n }, unit);
      expect(value / step, `${unit.symbol}: ${text}`).toBeCloseTo(1, 9);
      expect(fromSi(toSi(one, unit), unit)).toBeCloseTo(1, 9);
      seen += 1;
    }
  expect(seen).toBe(unitTable.length);
});

test("fractions are written out where they end", () => {
  expect(exactNumber({ numerator: 127n, denominator: 5000n })).toBe("0.0254");
  expect(exactNumber({ numerator: 5n, denominator: 9n })).toBe("5/9");
  expect(exactNumber({ numerator: 1000n, denominator: 1n })).toBe("1000");
  expect(exactNumber({ numerator: 1n, denominator: 1_000_000_000n })).toBe("1e-9");
});

test("spellings that are read and that are refused are both shown", () => {
  expect(spellings.filter(({ refused }) => refused).length).toBeGreaterThanOrEqual(8);
  expect(spellings.filter(({ refused }) => !refused).length).toBeGreaterThanOrEqual(8);
});
