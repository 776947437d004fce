import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { Settlement } from "./howToSettle.ts";
import type { Judged } from "./Judged.ts";
import { measuring, type SettledWord, wordWith } from "./measuring.ts";

/** Share of its tolerance to which an input is measured at most, so that the naming of it means something. */
export const MOST = 0.9;
/** Share of its tolerance beyond which nobody measures: what would need it lies on its limit. */
export const FINEST = 0.02;
/** As many dimensions as a person measures for one answer. */
export const AT_ONCE = 6;
/** Halvings of the range in which the needed share lies. */
const HALVINGS = 6;

/** Dimensions that spread what is compared and unsettled, the weightiest first. */
function weightiest({ verdict, derivations, values }: Judged): readonly string[] {
  const shares = new Map<string, number>();
  for (const { fact, againstName, state } of verdict.comparisons) {
    if (state !== "possible") continue;
    for (const name of [fact, againstName]) {
      if (name === undefined) continue;
      const derivation = derivations.get(name);
      const spread = derivation?.state === "value" ? derivation.spread : [{ path: name, share: 1 }];
      for (const { path, share } of spread)
        if (values.get(path)?.kind === "dimension") shares.set(path, Math.max(share, shares.get(path) ?? 0));
    }
  }
  return [...shares]
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, AT_ONCE)
    .map(([path]) => path);
}

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
  for (const path of weightiest(judged)) {
    const settles = function* (share: number): Steps<Settlement | undefined> {
      const measured = measuring(judged, new Map([[path, share]]));
      return (yield* wordWith(measured, judged, catalog)) === becomes
        ? { becomes, measure: measured.measure }
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
