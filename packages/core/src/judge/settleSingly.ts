import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { Settlement } from "./howToSettle.ts";
import { isRefuted } from "./isRefuted.ts";
import type { Judged } from "./Judged.ts";
import { type Measured, measuring, type SettledWord, settles } from "./measuring.ts";
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

/** The widest share of which something is true that is true of all finer ones, or undefined where it is of none. */
function* widest(isTrue: (share: number) => Steps<boolean>): Steps<number | undefined> {
  if (!(yield* isTrue(FINEST))) return undefined;
  let [low, high] = [FINEST, MOST];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const share = (low + high) / 2;
    if (yield* isTrue(share)) low = share;
    else high = share;
  }
  return low;
}

/**
 * One dimension that alone settles an open verdict, and how well it must be measured; of several the one that needs
 * the least. Nothing is taken for a straight line: what a few engines promise is evaluated with its full band, and
 * where that does not hold every trial is.
 * @param becomes what the verdict becomes at the nominal values
 * @returns undefined where none does alone
 */
export function* settleSingly(
  judged: Judged,
  catalog: Catalog,
  becomes: SettledWord,
): Steps<Settlement | undefined> {
  let best: { readonly share: number; readonly measured: Measured } | undefined;
  for (const { path } of weightiest(judged).slice(0, AT_ONCE)) {
    const to = (share: number) => measuring(judged, new Map([[path, share]]));
    const does = (share: number) => settles(to(share), judged, catalog, becomes);
    const promised = yield* widest(function* (share) {
      yield;
      return !isRefuted(to(share), judged, catalog, becomes);
    });
    if (promised === undefined || promised <= (best?.share ?? 0)) continue;
    const share = (yield* does(promised)) ? promised : yield* widest(does);
    if (share !== undefined && share > (best?.share ?? 0)) best = { share, measured: to(share) };
  }
  return best && { becomes, provided: "as-expected", measure: best.measured.measure };
}
