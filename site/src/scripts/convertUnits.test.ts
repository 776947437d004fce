import fc from "fast-check";
import { unitOf, unitsLike, unitTable } from "trialfit";
import { expect, it } from "vitest";
import { convertUnits } from "./convertUnits.ts";

it("refuses what is colder than absolute zero, in every scale, and says where that is", () => {
  for (const text of ["-300 degC", "-460 degF", "-1 K", "-270 degC ± 5"])
    expect(convertUnits(text, "K"), text).toEqual({
      problem: expect.stringMatching(/below absolute zero; expected at least .*0 K.*-273\.15 °C/),
    });
  for (const text of ["-273.15 degC", "0 K", "-40 degF ± 1", "20 degC"])
    expect(convertUnits(text, "K"), text).toHaveProperty("rows");
});

it("takes what is below nothing of every other kind", () => {
  const others = unitTable.filter((unit) => unitsLike(unit).every(({ offset }) => offset.numerator === 0n));
  expect(others.length).toBeGreaterThan(40);
  fc.assert(
    fc.property(fc.constantFrom(...others), fc.integer({ min: -999, max: 999 }), ({ symbol }, number) => {
      const converted = convertUnits(`${number} ${symbol === "1" ? "" : symbol}`, symbol);
      if (!("rows" in converted)) throw new Error(converted.problem);
      expect(converted.rows).toHaveLength(unitsLike(unitOf(symbol)).length);
    }),
  );
});
