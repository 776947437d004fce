import type { Weight } from "@trialfit/rules";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import {
  allChanged,
  brokenNominally,
  consequencesOf,
  type Judgement,
  type Outcome,
  weighs,
} from "./Consequences.ts";
import type { Broken, Worsened } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";
import { worsenedBy, worsenedNominally } from "./worsenedBy.ts";

/** What the rungs of one ladder do to the rules that rest on the dimension; each is worked out once for all findings. */
export class Effects {
  private readonly base: Standing;
  private readonly at: (rung: number) => Standing;
  private readonly judgements: readonly Judgement[];
  private readonly outcomes = new Map<string, Outcome>();

  /** @param at the build on a rung */
  constructor(base: Standing, at: (rung: number) => Standing, judgements: readonly Judgement[]) {
    this.base = base;
    this.at = at;
    this.judgements = judgements;
  }

  private weighing(least: Weight): readonly Judgement[] {
    return this.judgements.filter(({ weight }) => weighs(weight, least));
  }

  /** What a rung does to rules that weigh as much as this, or more. */
  *outcome(rung: number, least: Weight): Steps<Outcome> {
    const key = `${least} ${rung}`;
    let outcome = this.outcomes.get(key);
    if (outcome === undefined) {
      outcome = yield* consequencesOf(this.at(rung), this.weighing(least));
      this.outcomes.set(key, outcome);
    }
    return outcome;
  }

  /** Whether one of some broken rules is broken at a rung at the nominal values already. */
  stillBroken(rung: number, broken: readonly Broken[]): boolean {
    const feared = this.judgements.filter(({ rule }) => broken.some((one) => one.rule === rule.file.id));
    return brokenNominally(this.at(rung), feared).length > 0;
  }

  /** What is broken at the nominal values already, and what is worse at them, but for one rule. */
  nominally(rung: number, rule: CompiledRule): { breaks: readonly Broken[]; worsens: readonly Worsened[] } {
    const others = this.others(rule);
    return {
      breaks: brokenNominally(this.at(rung), others),
      worsens: worsenedNominally(this.base, this.at(rung), others),
    };
  }

  /** All that a rung breaks and settles, whatever it weighs. */
  all(rung: number): Steps<Outcome> {
    return allChanged(this.at(rung), this.judgements);
  }

  /** What fails or is open already and is worse on a rung, but for the rule that it is taken for. */
  worsened(rung: number, rule: CompiledRule): Steps<readonly Worsened[]> {
    return worsenedBy(this.base, this.at(rung), this.others(rule));
  }

  private others(rule: CompiledRule): readonly Judgement[] {
    return this.judgements.filter((one) => one.rule !== rule);
  }
}
