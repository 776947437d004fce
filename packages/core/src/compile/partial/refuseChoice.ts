import type { PartKind } from "../PartialJudge.ts";

/**
 * Refuses to choose what cannot be chosen now.
 * @param chosen how many kinds are, from the first
 * @throws RangeError when a level before is not chosen, or there is no such level or option
 */
export function refuseChoice(
  kinds: readonly PartKind[],
  chosen: number,
  level: number,
  option: number,
): void {
  const last = Math.min(chosen, kinds.length - 1);
  if (!Number.isInteger(level) || level < 0 || level > last)
    throw new RangeError(`found level ${level}; expected 0 to ${last}`);
  const { name, options } = kinds[level]!;
  if (!Number.isInteger(option) || option < 0 || option >= options.length)
    throw new RangeError(`found option ${option} of ${name}; expected 0 to ${options.length - 1}`);
}
