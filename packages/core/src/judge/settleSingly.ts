import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { Settlement } from "./howToSettle.ts";
import type { Judged } from "./Judged.ts";
import { measuring, type SettledWord, wordWith } from "./measuring.ts";
import { weightiest } from "./weightiest.ts";

/** Share of its tolerance to which a careful measurement brings an input. */
export const CAREFUL = 0.3;
/** Share of its tolerance to which an input is measured at most, so that the naming of it means something. */
export const MOST = 0.9;
/** Share of its tolerance beyond which nobody measures: what would need it lies on its limit. */
export const FINEST = 0.02;
/** As many dimensions as a person measures for one answer. */
export const AT_ONCE = 6;
/** Halvings of the range in which the needed share lies. */
const HALVINGS = 6;

/**
 * One dimension that alone settles an open verdict, and how well it must be measured; of several the one that needs
 * the least. Nothing is taken for a straight line: each trial is evaluated with its full band.
 * @param becomes what the verdict becomes at the nominal values
 * @returns undefined where none does alone
 */
export function* settleSingly(
  judged: Judged,
  catalog: Catalog,
  becomes: SettledWord,
): Steps<Settlement | undefined> {
  let best: { readonly share: number; readonly settlement: Settlement } | undefined;
  for (const { path } of weightiest(judged).slice(0, AT_ONCE)) {
    const settles = function* (share: number): Steps<Settlement | undefined> {
      const measured = measuring(judged, new Map([[path, share]]));
      return (yield* wordWith(measured, judged, catalog)) === becomes
        ? { becomes, provided: "as-expected", measure: measured.measure }
        : undefined;
    };
    let found = yield* settles(FINEST);
    if (found === undefined) continue;
    let [low, high] = [FINEST, MOST];
    for (let halving = 0; halving < HALVINGS; halving += 1) {
      const share = (low + high) / 2;
      const wider = yield* settles(share);
      if (wider === undefined) high = share;
      else [low, found] = [share, wider];
    }
    if (best === undefined || low > best.share) best = { share: low, settlement: found };
  }
  return best?.settlement;
}
