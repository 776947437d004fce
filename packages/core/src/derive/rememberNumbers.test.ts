import { fc, test } from "@fast-check/vitest";
import { expect, it } from "vitest";
import { hashOf } from "./hashOf.ts";
import { rememberNumbers } from "./rememberNumbers.ts";

const few = fc.constantFrom(0, -0, 1, 1.5, -2, 1e-300, 0.1 + 0.2, 0.3);

test.prop([fc.array(fc.tuple(few, few), { minLength: 1, maxLength: 100 }), fc.integer({ min: 1, max: 8 })])(
  "answers what the computation gives, and keeps the answers that were asked for last",
  (points, most) => {
    const weigh = ({ a, b }: { readonly a: number; readonly b: number }) => 7 * a + 5 * b;
    const computed: string[] = [];
    const remembered = rememberNumbers(["a", "b"], most, (numbers: { a: number; b: number; c: number }) => {
      computed.push(`${numbers.a} ${numbers.b}`);
      return weigh(numbers);
    });
    // As a plain list, the one that was asked for last at its end.
    let kept: string[] = [];
    for (const [index, [a, b]] of points.entries()) {
      const before = computed.length;
      expect(remembered({ a, b, c: index })).toBe(weigh({ a, b }));
      const name = `${Object.is(a, -0) ? "-0" : a} ${Object.is(b, -0) ? "-0" : b}`;
      expect(computed.length - before).toBe(kept.includes(name) ? 0 : 1);
      kept = [...kept.filter((one) => one !== name), name].slice(-most);
    }
  },
);

/** The number of two halves of its bits. */
const numberOf = (low: number, high: number) => new Float64Array(Uint32Array.of(low, high).buffer)[0]!;
/** What the second half of a number is mixed with. */
const mixed = (low: number) => {
  const hash = Math.imul(low, 0x9e3779b1);
  return hash ^ (hash >>> 15);
};

test.prop([fc.nat(2 ** 31), fc.nat(2 ** 31), fc.nat(2 ** 30)])(
  "tells numbers apart whose hash is the same",
  (low, otherLow, high) => {
    const one = numberOf(low, high);
    const other = numberOf(otherLow, (high ^ mixed(low) ^ mixed(otherLow)) >>> 0);
    fc.pre(one !== other && Number.isFinite(one) && Number.isFinite(other));
    expect(hashOf(Float64Array.of(one))).toBe(hashOf(Float64Array.of(other)));
    const doubled = rememberNumbers(["a"], 4, ({ a }: { a: number }) => 2 * a);
    for (const a of [one, other, one]) expect(doubled({ a })).toBe(2 * a);
  },
);

it("keeps nothing of what was refused", () => {
  let asked = 0;
  const refuses = rememberNumbers(["a"], 4, ({ a }: { a: number }) => {
    asked += 1;
    if (asked === 1) throw new RangeError("no");
    return a;
  });
  expect(() => refuses({ a: 3 })).toThrow(RangeError);
  expect(refuses({ a: 3 })).toBe(3);
  expect(refuses({ a: 3 })).toBe(3);
  expect(asked).toBe(2);
});
