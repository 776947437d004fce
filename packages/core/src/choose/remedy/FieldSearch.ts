import type { Weight } from "@trialfit/rules";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { changesOf } from "./changesOf.ts";
import type { Ground } from "./Ground.ts";
import type { NoRemedy, Remedy } from "./Remedy.ts";
import { rankOthers } from "./rankRemedies.ts";
import { Way } from "./Way.ts";
import type { WorkKind } from "./works.ts";

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

  /**
   * Remedies for one rule that fails or is open, one for each kind of work.
   * @param least the lightest weight of what must not break
   */
  *remedies(rule: CompiledRule, least: Weight): Steps<readonly Remedy[]> {
    const found = new Map<WorkKind, Remedy>();
    for (const way of this.ways) {
      const good = yield* way.good(rule, least);
      if (good !== undefined && good < (found.get(way.work)?.steps ?? Number.POSITIVE_INFINITY))
        found.set(way.work, yield* way.remedy(good, rule, least));
    }
    return [...found.values()];
  }

  /**
   * Why there is none.
   * @param closer whether it is asked how closely what is too loose would have to be kept
   */
  *whyNot(rule: CompiledRule, least: Weight, closer: boolean): Steps<NoRemedy> {
    const not: NoRemedy[] = [];
    for (const way of this.ways) not.push(yield* way.noRemedy(rule, least, closer));
    return rankOthers(not)[0]!;
  }
}
