import { familyMembers } from "./familyMembers.ts";
import type { Fit } from "./fitAims.ts";
import { freeDirections } from "./freeDirections.ts";
import { stepEffects } from "./stepEffects.ts";
import type { Trial } from "./Trial.ts";

/** Other sizes at which the aims are met as well. */
export interface Family {
  /** How many of the wanted dimensions may be chosen freely. */
  readonly freedom: number;
  /** Paths of the dimensions that move along the family, with the change of each for one unit of the first [SI]. */
  readonly moves: readonly { readonly path: string; readonly change: number }[];
  /** Some of its members, along the first dimension that moves; sizes [SI] as they can be ordered. */
  readonly members: readonly (readonly number[])[];
}

/** A dimension that moves less than this, against the one that moves most, stays as it is. */
const STILL = 1e-4;
/** One that moves less than this does not lead. */
const LEADING = 0.1;

/**
 * The family that goes through a solution, or undefined where it is the only one. It is followed along the dimension
 * whose steps move the aims most: a finer one makes up for it, and not the other way round.
 * @param trial with the allowances by which members are judged
 * @param fit the exact solution
 * @param found the same as it can be ordered: not listed again
 */
export function findFamily(trial: Trial, fit: Fit, found: readonly number[]): Family | undefined {
  const free = freeDirections(trial, fit.sizes);
  const [direction] = free;
  if (direction === undefined) return undefined;
  const change = (index: number) =>
    direction[index]! * (trial.wanted[index]!.high - trial.wanted[index]!.low);
  const most = Math.max(...direction.map(Math.abs));
  const effects = stepEffects(trial, fit.sizes);
  const moving = trial.wanted
    .map((wanted, index) => ({ wanted, index }))
    .filter(({ index }) => Math.abs(direction[index]!) > STILL * most)
    .sort((a, b) => Math.abs(direction[b.index]!) - Math.abs(direction[a.index]!));
  const lead = moving
    .filter(({ index }) => Math.abs(direction[index]!) > LEADING * most)
    .reduce((a, b) => (effects[b.index]! > effects[a.index]! * (1 + 1e-6) ? b : a));
  const ordered = [lead, ...moving.filter((one) => one !== lead)];
  return {
    freedom: free.length,
    moves: ordered.map(({ wanted: { path }, index }) => ({
      path,
      change: change(index) / change(lead.index),
    })),
    members: familyMembers(trial, {
      fit,
      found,
      moving: ordered.map(({ index }) => index),
      freedom: free.length,
    }),
  };
}
