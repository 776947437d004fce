import { climb, type Found } from "./climb.ts";
import type { Spread } from "./Derivation.ts";
import { FEW, refineExtreme } from "./refineExtreme.ts";
import { finish, type Steps } from "./Steps.ts";

/** One input with a tolerance. */
export interface Tolerance {
  readonly path: string;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** The value of the quantity at a point, given as one number for each tolerance in order. */
export type AtPoint = (point: readonly number[]) => number;

export interface Band {
  readonly low: number;
  readonly high: number;
  readonly spread: readonly Spread[];
}

const INNER = [0.25, 0.5, 0.75];
/** Share of the whole spread below which an input is tried at its ends only: inside it can hide next to nothing. */
const MINOR = 0.005;
/** Shares below which inputs are moved together to look behind an extreme that others made. */
const LITTLE = [MINOR, 0.2];

function candidatesOf({ low, nominal, high }: Tolerance, guarded: boolean, share: number): readonly number[] {
  if (!guarded) return [low, nominal, high];
  if (share < MINOR) return [low, high];
  return [low, nominal, high, ...INNER.map((part) => low + part * (high - low))];
}

/** Corners of the box at which a guarded quantity is tried beside the one that the signs point to. */
const TRIALS = 24;

/** Corners of the box of tolerances, the same in every run. */
function randomCorners(tolerances: readonly Tolerance[]): readonly (readonly number[])[] {
  let state = 20_261_126;
  const coin = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >= 2 ** 31;
  };
  return Array.from({ length: TRIALS }, () => tolerances.map(({ low, high }) => (coin() ? high : low)));
}

/** The value at each of some points. */
function* valuesAt(at: AtPoint, points: readonly (readonly number[])[]): Steps<readonly Found[]> {
  const found: Found[] = [];
  for (const point of points) {
    found.push({ point, value: at(point) });
    yield;
  }
  return found;
}

/**
 * Lowest and highest value over the box of tolerances. Every input is first moved alone, which gives the sign
 * and size of its effect; both extremes are then sought from the corner that these signs point to, by moving
 * one input at a time until nothing improves. For a quantity that is monotone in each input this is exact;
 * for one that is not, inner points are tried as well, and from these on along the input; the search begins anew from any of some random corners that
 * lies beyond what was found, from the corner that the signs point away from where that lies beyond the nominal value
 * after all, and from the other end of an input that moves the value the same way at both, and where the inputs are few it goes on between the points tried.
 */
export function* searchBandInSteps(
  at: AtPoint,
  tolerances: readonly Tolerance[],
  nominal: number,
  guarded: boolean,
): Steps<Band> {
  const centre = tolerances.map((tolerance) => tolerance.nominal);
  const moved = (index: number, value: number) => at(centre.with(index, value));
  const effects: Omit<Spread, "share">[] = [];
  for (const [index, { path, low, high }] of tolerances.entries()) {
    effects.push({ path, atLow: moved(index, low), atHigh: moved(index, high) });
    yield;
  }
  const width = (effect: { atLow: number; atHigh: number }) =>
    Math.max(effect.atLow, effect.atHigh, nominal) - Math.min(effect.atLow, effect.atHigh, nominal);
  const total = effects.reduce((sum, effect) => sum + width(effect), 0);
  const shares = effects.map((effect) => (total === 0 ? 0 : width(effect) / total));
  const candidates = tolerances.map((tolerance, index) => candidatesOf(tolerance, guarded, shares[index]!));
  const corner = (sign: 1 | -1) =>
    tolerances.map(({ low, high, nominal: middle }, index) => {
      const { atLow, atHigh } = effects[index]!;
      if (Math.max(sign * atLow, sign * atHigh) <= sign * nominal && guarded) return middle;
      return sign * atHigh >= sign * atLow ? high : low;
    });
  /** An input that raises the value towards both ends: the end that gains less alone can gain more with others. */
  const opposite = function* (sign: 1 | -1, signed: AtPoint, found: Found): Steps<readonly Found[]> {
    const others: Found[] = [];
    for (const [index, { low, high }] of tolerances.entries()) {
      const { atLow, atHigh } = effects[index]!;
      const raises = Math.min(sign * atLow, sign * atHigh) > sign * nominal;
      if (!guarded || !raises || shares[index]! < MINOR) continue;
      const other = found.point[index] === high ? low : high;
      const start = found.point.with(index, other);
      others.push(yield* climb(signed, start, candidates.with(index, [other]), total));
    }
    return others;
  };
  /** Where every input alone moves the value away, all together can bring it back, and beyond: a clearance that closes. */
  const farCorner = function* (sign: 1 | -1, signed: AtPoint): Steps<readonly Found[]> {
    if (!guarded) return [];
    const start = corner(sign === 1 ? -1 : 1);
    const value = signed(start);
    yield;
    return value > sign * nominal ? [yield* climb(signed, start, candidates, total)] : [];
  };
  const trials = guarded ? yield* valuesAt(at, randomCorners(tolerances)) : [];
  const refined = guarded && tolerances.length <= FEW;
  const extreme = function* (sign: 1 | -1): Steps<number> {
    const signed = (point: readonly number[]) => sign * at(point);
    const found = yield* climb(signed, corner(sign), candidates, total);
    // A greatest of several things can hide behind the one that rules at the nominal values, also where this one is
    // at its extreme and only what does little or nothing alone is moved.
    const behind = yield* valuesAt(
      at,
      trials.map(({ point: corner }, trial) => {
        const most = LITTLE[trial % LITTLE.length]!;
        return found.point.map((value, index) => (shares[index]! < most ? corner[index]! : value));
      }),
    );
    const better = [...trials, ...behind].reduce<(typeof trials)[number] | undefined>(
      (best, trial) =>
        sign * trial.value > (best === undefined ? found.value : sign * best.value) ? trial : best,
      undefined,
    );
    const begun = better === undefined ? found : yield* climb(signed, better.point, candidates, total);
    const others = [...(yield* opposite(sign, signed, begun)), ...(yield* farCorner(sign, signed))];
    const best = [begun, ...others].reduce((a, b) => (b.value > a.value ? b : a));
    return sign * (refined ? yield* refineExtreme(signed, best.point, tolerances) : best.value);
  };
  const low = yield* extreme(-1);
  const high = yield* extreme(1);
  const spread = effects
    .map((effect, index) => ({ ...effect, share: shares[index]! }))
    .filter((effect) => effect.share > 0)
    .sort((a, b) => b.share - a.share || (a.path < b.path ? -1 : 1));
  return {
    low: Math.min(low, nominal, ...effects.flatMap((effect) => [effect.atLow, effect.atHigh])),
    high: Math.max(high, nominal, ...effects.flatMap((effect) => [effect.atLow, effect.atHigh])),
    spread,
  };
}

/** {@link searchBandInSteps} at once. */
export function searchBand(...search: Parameters<typeof searchBandInSteps>): Band {
  return finish(searchBandInSteps(...search));
}
