import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { changesOf } from "./changesOf.ts";
import type { NoRemedy, Remedy } from "./Remedy.ts";
import { type Ground, Way } from "./Way.ts";
import type { WorkKind } from "./works.ts";

const REASONS: readonly NoRemedy["why"][] = ["breaks", "too-loose", "out-of-reach"];

/** Of two ways that do not do, the one first that comes nearer. */
const nearer = (a: NoRemedy, b: NoRemedy): number =>
  REASONS.indexOf(a.why) - REASONS.indexOf(b.why) || (a.nearest?.steps ?? 0) - (b.nearest?.steps ?? 0);

/** What one dimension can do for findings. What it does to other rules is worked out once for all of them. */
export class FieldSearch {
  private readonly ways: readonly Way[];

  constructor(ground: Ground) {
    const { up, down } = changesOf(ground.path);
    this.ways = [
      ...(up === undefined ? [] : [new Way(ground, 1, up)]),
      ...(down === undefined ? [] : [new Way(ground, -1, down)]),
    ];
  }

  /** Whether any work changes the dimension. */
  get changeable(): boolean {
    return this.ways.length > 0;
  }

  /** Remedies for one rule that fails or is open, one for each kind of work, or why there is none. */
  *search(rule: CompiledRule): Steps<{ readonly remedies: readonly Remedy[]; readonly not?: NoRemedy }> {
    const found = new Map<WorkKind, Remedy>();
    const not: NoRemedy[] = [];
    for (const way of this.ways) {
      const nearest = yield* way.nearest(rule);
      const good = nearest.rung === undefined ? undefined : yield* way.goodFrom(nearest.rung, rule);
      if (good === undefined) not.push(yield* way.noRemedy(nearest, rule));
      else if (good < (found.get(way.work)?.steps ?? Number.POSITIVE_INFINITY))
        found.set(way.work, yield* way.remedy(good, rule));
    }
    const remedies = [...found.values()];
    return remedies.length > 0 ? { remedies } : { remedies, not: not.sort(nearer)[0]! };
  }
}
