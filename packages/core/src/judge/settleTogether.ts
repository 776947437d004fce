import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { Settlement } from "./howToSettle.ts";
import type { Judged } from "./Judged.ts";
import { measuring, type SettledWord, settles } from "./measuring.ts";
import { CAREFUL, FINEST, MOST } from "./settleSingly.ts";
import { weightiest } from "./weightiest.ts";

/** Shares of their tolerances that are tried for all at once, from a careful measurement to one that hardly any is. */
const SHARES = [CAREFUL, 0.1, 0.03, 0.01, 0.002];
/** Halvings of the range in which the widest share lies. */
const HALVINGS = 4;
/** Part of the weightiest input's share that another must carry to be named on the limit itself. */
const NAMED_FROM = 0.1;

/** Dimensions measured to one share of their tolerances. */
interface Trial {
  readonly paths: readonly string[];
  readonly share: number;
}

/**
 * The weightiest dimensions that together settle an open verdict, as many as it takes, and how well each must be
 * measured: as coarsely as will do, then as few as will do. Nothing is taken for a straight line.
 * @param becomes what the verdict becomes at the nominal values
 * @returns where no fineness settles it, since the nominal value lies on the limit, the dimensions that weigh, to be
 *   measured carefully: what comes out clear of the limit settles it. Undefined where no dimension weighs
 */
export function* settleTogether(
  judged: Judged,
  catalog: Catalog,
  becomes: SettledWord,
): Steps<Settlement | undefined> {
  const all = weightiest(judged);
  const measureOf = ({ paths, share }: Trial) =>
    measuring(judged, new Map(paths.map((path) => [path, share])));
  const does = (trial: Trial): Steps<boolean> => settles(measureOf(trial), judged, catalog, becomes);
  let above = MOST;
  for (const first of SHARES) {
    if (!(yield* does({ paths: all.map(({ path }) => path), share: first }))) {
      above = first;
      continue;
    }
    let share = first;
    let [few, enough] = [0, all.length];
    const paths = (count: number) => all.slice(0, count).map(({ path }) => path);
    while (enough - few > 1) {
      const count = Math.floor((few + enough) / 2);
      if (yield* does({ paths: paths(count), share })) enough = count;
      else few = count;
    }
    for (let halving = 0; halving < HALVINGS; halving += 1) {
      const wider = (share + above) / 2;
      if (yield* does({ paths: paths(enough), share: wider })) share = wider;
      else above = wider;
    }
    const { measure } = measureOf({ paths: paths(enough), share });
    return { becomes, provided: share < FINEST ? "as-expected-finely" : "as-expected", measure };
  }
  const named = all.filter(({ share }) => share >= NAMED_FROM * all[0]!.share).map(({ path }) => path);
  const { measure } = measureOf({ paths: named, share: CAREFUL });
  return measure.length === 0 ? undefined : { becomes, provided: "clear-of-limit", measure };
}
