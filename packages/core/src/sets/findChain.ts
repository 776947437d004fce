import type { SetFile } from "@trialfit/rules";
import { nearestWord } from "../read/nearestWord.ts";

/** A set that extends one which is not there, or itself. */
export class SetError extends Error {
  readonly set: string;
  constructor(set: string, message: string) {
    super(`${set}: ${message}`);
    this.name = "SetError";
    this.set = set;
  }
}

/**
 * The sets from the first to the given one, each extending the one before.
 * @param known sets that may be extended, by their ids
 * @throws SetError when a set that it extends is not known, or the sets extend one another in a ring
 */
export function findChain(set: SetFile, known: readonly SetFile[]): readonly SetFile[] {
  const chain = [set];
  for (let one = set; one.extends !== undefined; ) {
    const wanted = one.extends;
    const base = known.find(({ id }) => id === wanted);
    if (base === undefined) {
      const near = nearestWord(
        wanted,
        known.map(({ id }) => id),
      );
      throw new SetError(
        one.id,
        `extends "${wanted}", which is not known${near === undefined ? "" : `; did you mean "${near}"?`}`,
      );
    }
    if (chain.some(({ id }) => id === base.id))
      throw new SetError(set.id, `extends itself by way of ${chain.map(({ id }) => id).join(", ")}`);
    chain.unshift(base);
    one = base;
  }
  return chain;
}
