import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { intervalFromSi, intervalToSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { rationalFromDecimal } from "../../units/Rational.ts";
import type { Ladder } from "./Ladder.ts";
import { toleranceText } from "./moveDimension.ts";
import { narrowDimension } from "./narrowDimension.ts";
import type { Standing } from "./Standing.ts";

/** Halvings of the share between what does and what does not. */
const HALVINGS = 6;
/** Part of what a tolerance is now below which to keep it more closely is no advice. */
const FINEST = 0.1;

/** One figure of a width [SI], rounded down: a tolerance as it is written on a drawing. */
function oneFigure(width: number, unit: string): number {
  const own = Math.abs(intervalFromSi(width, unitOf(unit)));
  const power = Math.floor(Math.log10(own));
  const digit = Math.floor(own / 10 ** power + 1e-9);
  return Math.abs(intervalToSi(rationalFromDecimal(`${digit}e${power}`)!, unitOf(unit)));
}

/**
 * The widest tolerance of a dimension, in one figure, with which a rule holds at a rung, all other tolerances as they
 * are.
 * @returns `± 0.05 mm`, or `+0.04/-0 mm` where its band is cut off on one side; undefined where its own tolerance alone does not decide, or is no single one
 */
export function* ownTolerance(
  base: Standing,
  ladder: Ladder,
  rung: number,
  rule: CompiledRule,
): Steps<string | undefined> {
  const value = ladder.at(rung);
  const [minus, plus] = [value.nominal - value.low, value.high - value.nominal];
  const widest = Math.max(minus, plus);
  if (ladder.placed || widest <= 0) return undefined;
  const holds = function* (share: number): Steps<boolean> {
    return (yield* base.moved(ladder.path, narrowDimension(value, share)).word(rule)) === "holds";
  };
  if (!(yield* holds(FINEST))) return undefined;
  let [good, bad] = [FINEST, 1];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (good + bad) / 2;
    if (yield* holds(middle)) good = middle;
    else bad = middle;
  }
  const share = oneFigure(good * widest, value.unit) / widest;
  if (!(yield* holds(share))) return undefined;
  const width = toleranceText(share * minus, share * plus, value.unit);
  return `${width.startsWith("+") ? "" : "± "}${width} ${value.unit}`;
}
