import { type Build, type FieldValue, fields, fromSi, quantities, toSi, unitOf, withField } from "trialfit";
import { writeSize } from "../../packages/core/src/choose/solve/writeSize.ts";
import { Chain } from "../../packages/core/src/derive/Chain.ts";
import { movedOnce } from "../../packages/core/src/derive/Moved.ts";
import type { Quantity } from "../../packages/core/src/derive/Quantity.ts";
import type { Random } from "../../packages/core/src/derive/seeded.ts";
import { unlessImpossible } from "../../packages/core/src/derive/unlessImpossible.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { type OrderStep, orderStep } from "../../packages/core/src/read/orderStep.ts";
import { rationalFromDecimal } from "../../packages/core/src/units/Rational.ts";
import { pick } from "../catalog/cylinderLayouts.ts";
import { rangeOf } from "../catalog/fieldText.ts";

/** A build some of whose sizes were taken out, with what they gave as aims. */
export interface Puzzle {
  readonly build: Build;
  readonly taken: readonly Taken[];
  readonly aims: readonly string[];
}

/** A size that was taken out. */
export interface Taken {
  readonly path: string;
  /** [SI], on a whole step. */
  readonly size: number;
  readonly step: OrderStep;
  /** As the build then has it: where it is looked for. */
  readonly text: string;
}

/** Steps of the room in which a size is looked for. */
const ROOM = [40, 400] as const;
/** Share of its own effect below which a size hides behind the others: then nobody could tell it from the aims. */
const HIDDEN = 0.02;
/** An aim allows this share of what a step does of the size that it hardly shows, if it is the one that moves it most. */
const ALLOWED = 0.2;
const ATTEMPTS = 400;

/** Quantities that can be aims: with a formula, computed without a search. */
const possible = [...quantities.values()].filter(
  ({ shape, formula, nominalOnly }) => shape === "monotone" && formula !== undefined && nominalOnly !== true,
);

const hasOffset = (unit: string) => unitOf(unit).offset.numerator !== 0n;

/** The size on a whole step that is nearest to the one that a build has, with room about it. */
function take(path: string, values: ReadonlyMap<string, FieldValue>, random: Random): Taken | undefined {
  const [value, place] = [values.get(path), values.get(`${path}.place`)];
  const spec = fields.get(path)?.spec;
  if (spec?.kind !== "dimension" || value?.kind !== "dimension") return undefined;
  if (hasOffset(value.unit)) return undefined;
  const step = orderStep(spec, value.unit, 0);
  const unit = unitOf(value.unit);
  const si = (count: number) => toSi(rationalFromDecimal((count * step.size).toFixed(step.decimals))!, unit);
  const whole = Math.round(fromSi(value.nominal, unit) / step.size);
  const room = Math.round(ROOM[0] + (ROOM[1] - ROOM[0]) * random());
  const below = Math.max(1, Math.round(room * random()));
  const [least, most] = rangeOf(spec).map((edge) => fromSi(edge, unit) / step.size);
  const low = Math.max(whole - below, Math.ceil(least! - 1e-9));
  const high = Math.min(whole + room - below, Math.floor(most! + 1e-9));
  if (!(low < whole && whole < high)) return undefined;
  const [from, to] = [low, high].map((count) =>
    writeSize(si(count), value.unit, spec, place?.kind === "choice" ? place.value : undefined),
  );
  const text = `? ${from} to ${to} in steps of ${step.size}${value.unit === "1" ? "" : ` ${value.unit}`}`;
  return { path, size: si(whole), step, text };
}

/** Aims that rest on sizes in common, each with a size of its own under it. */
function drawPairs(chain: Chain, values: ReadonlyMap<string, FieldValue>, count: number, random: Random) {
  const pairs: { readonly aim: Quantity; readonly taken: Taken }[] = [];
  for (let attempt = 0; attempt < ATTEMPTS && pairs.length < count; attempt += 1) {
    const aim = pick(possible, random);
    if (pairs.some((one) => one.aim === aim) || hasOffset(aim.unit)) continue;
    if (chain.finder.lacking(aim.id).length > 0) continue;
    const roots = [...chain.finder.rootsOf(aim.id)];
    const apart = pairs.length > 0 && !pairs.some((one) => roots.includes(one.taken.path));
    const free = roots.filter((path) => !pairs.some((one) => one.taken.path === path));
    if (apart || free.length === 0) continue;
    const path = pick(free, random);
    const taken = take(path, values, random);
    if (taken !== undefined) pairs.push({ aim, taken });
  }
  return pairs.length < count ? undefined : pairs;
}

/** The effect of a step of each size on each aim [SI]; undefined where the sizes cannot be. */
function effectsOf(chain: Chain, aims: readonly Quantity[], taken: readonly Taken[]) {
  const at = (index: number, steps: number) =>
    aims.map(({ id }) => {
      const sizes = taken.map(({ path, size, step }, other) => [
        path,
        other === index ? size + steps * step.si : size,
      ]);
      return chain.at(id, movedOnce(new Map(sizes as [string, number][])));
    });
  return unlessImpossible(() => {
    const reached = at(-1, 0);
    const columns = taken.map((_, index) => {
      const [less, more] = [at(index, -1), at(index, 1)];
      return more.map((value, aim) => (value - less[aim]!) / 2);
    });
    return { reached, rows: aims.map((_, aim) => columns.map((column) => column[aim]!)) };
  });
}

/** Part of each size's effect that the other sizes cannot make up for: by Gram and Schmidt, over scaled aims. */
function leastSeen(rows: readonly (readonly number[])[]): number {
  const scaled = rows.map((row) => row.map((one) => one / Math.max(...row.map(Math.abs), Number.MIN_VALUE)));
  const columns = rows.map((_, size) => scaled.map((row) => row[size]!));
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, one, at) => sum + one * b[at]!, 0);
  const seen = columns.map((column, size) => {
    const basis: (readonly number[])[] = [];
    const rest = (vector: readonly number[]) =>
      basis.reduce<readonly number[]>((left, one) => {
        const share = dot(left, one) / dot(one, one);
        return left.map((value, at) => value - share * one[at]!);
      }, vector);
    for (const [other, vector] of columns.entries()) {
      const left = other === size ? vector.map(() => 0) : rest(vector);
      if (dot(left, left) > 1e-20) basis.push(left);
    }
    const own = rest(column);
    return Math.sqrt(dot(own, own));
  });
  return Math.min(...seen);
}

function aimText({ unit }: Quantity, value: number, allowance: number): string {
  const print = (si: number, digits: number) => String(Number(fromSi(si, unitOf(unit)).toPrecision(digits)));
  return `${print(value, 15)}${unit === "1" ? "" : ` ${unit}`} ± ${print(allowance, 6)}`;
}

/**
 * Takes some sizes out of a build, and asks for what they gave.
 * @returns undefined where no sizes were found that the aims tell apart
 */
export function drawPuzzle(build: Build, count: number, random: Random): Puzzle | undefined {
  const values = withDefaults(build);
  const chain = new Chain(values, quantities);
  for (let attempt = 0; attempt < ATTEMPTS / 10; attempt += 1) {
    const pairs = drawPairs(chain, values, count, random);
    if (pairs === undefined) continue;
    const aims = pairs.map(({ aim }) => aim);
    const taken = pairs.map((one) => one.taken);
    const effects = effectsOf(chain, aims, taken);
    const seen = effects === undefined ? 0 : leastSeen(effects.rows);
    if (effects === undefined || !(seen > HIDDEN)) continue;
    const asked = aims.map((aim, index) => {
      const most = Math.max(...effects.rows[index]!.map(Math.abs));
      return { path: `aims.${aim.id}`, text: aimText(aim, effects.reached[index]!, ALLOWED * seen * most) };
    });
    const open = [...taken, ...asked].reduce((one, { path, text }) => withField(one, path, text), build);
    return { build: open, taken, aims: aims.map(({ id }) => id) };
  }
  return undefined;
}
