import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  finite,
  notNegative,
  positive,
  requireAll,
  requireCounts,
  requireThat,
  share,
} from "./requireAll.ts";
import { between, refuses } from "./support.test-support.ts";

const numbers = fc.double({ min: -10, max: 10, noNaN: true });

property.prop([numbers])("an interval lets through just what lies in it", (a) => {
  const passes = (interval: Parameters<typeof requireAll>[0]) => {
    try {
      requireAll(interval, { a });
      return true;
    } catch (error) {
      expect(error).toBeInstanceOf(RangeError);
      expect(`${error}`).toContain(`a: found ${a}, expected a finite number`);
      return false;
    }
  };
  expect(passes(finite)).toBe(true);
  expect(passes(positive)).toBe(a > 0);
  expect(passes(notNegative)).toBe(a >= 0);
  expect(passes(share)).toBe(a >= 0 && a <= 1);
  expect(passes({ above: -3, below: 3 })).toBe(a > -3 && a < 3);
});

property.prop([fc.array(numbers, { minLength: 1, maxLength: 6 }), fc.nat(), between(-5, -0.01)])(
  "the first that is wrong is named, wherever it stands",
  (values, place, wrong) => {
    const at = place % values.length;
    const named = Object.fromEntries(values.map((value, i) => [`v${i}`, i === at ? wrong : Math.abs(value)]));
    refuses(() => requireAll(notNegative, named), `v${at}`);
  },
);

property.prop([fc.double({ min: -20, max: 20, noNaN: true }), fc.integer({ min: 1, max: 1000 })])(
  "pieces come whole, from one up",
  (some, pieces) => {
    expect(() => requireCounts({ pieces })).not.toThrow();
    refuses(() => requireCounts({ bolts: some + (Number.isInteger(some) ? 0.5 : 0) }), "bolts");
    refuses(() => requireCounts({ bolts: -pieces + 1 }), "bolts");
  },
);

property.prop([fc.boolean(), numbers])(
  "a condition that does not hold names what was found",
  (holds, found) => {
    const check = () => requireThat(holds, "bore", found, "a round one");
    if (holds) expect(check).not.toThrow();
    else expect(check).toThrow(new RangeError(`bore: found ${found}, expected a round one`));
  },
);
