import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { DimensionValue } from "../../read/FieldValue.ts";
import { narrowDimension } from "./narrowDimension.ts";
import type { Standing } from "./Standing.ts";

/** Parts of what they are to which tolerances are shrunk, the widest first. */
const SHARES = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.05];

/**
 * To which part of what they are now all tolerances under a rule would have to shrink together, so that it holds.
 * @param base the build as it is
 * @param paths the dimensions under the rule
 * @param moved the one that comes to another size at the same time, if one does
 * @returns undefined where not even a twentieth does
 */
export function* commonShare(
  base: Standing,
  rule: CompiledRule,
  paths: readonly string[],
  moved: { readonly path: string; readonly value: DimensionValue } | undefined,
): Steps<number | undefined> {
  const holds = function* (share: number): Steps<boolean> {
    const narrowed = base.narrowed(paths, share);
    const there =
      moved === undefined ? narrowed : narrowed.moved(moved.path, narrowDimension(moved.value, share));
    return (yield* there.word(rule)) === "holds";
  };
  let [bad, good] = [-1, SHARES.length];
  while (good - bad > 1) {
    const middle = Math.floor((bad + good) / 2);
    if (yield* holds(SHARES[middle]!)) good = middle;
    else bad = middle;
  }
  return SHARES[good];
}
