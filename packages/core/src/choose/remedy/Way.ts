import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { fieldLabel } from "../../read/fieldCatalog.ts";
import { brokenNominally, consequencesOf, type Judgement, type Outcome } from "./Consequences.ts";
import { findNearest, firstBetween, type Nearest } from "./findNearest.ts";
import { Ladder } from "./Ladder.ts";
import type { NoRemedy, Remedy, SizeChange } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";
import type { WorkKind } from "./works.ts";

/** What both ways of changing one dimension have in common. */
export interface Ground {
  /** The build as it is. */
  readonly base: Standing;
  /** Its fields, defaults filled in. */
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly path: string;
  /** Every rule that rests on the dimension. */
  readonly judgements: readonly Judgement[];
}

/** One dimension of a build made larger, or made smaller, by one kind of work. */
export class Way {
  readonly work: WorkKind;
  private readonly path: string;
  private readonly base: Standing;
  private readonly ladder: Ladder;
  private readonly judgements: readonly Judgement[];
  private readonly standings = new Map<number, Standing>();
  private readonly outcomes = new Map<number, Outcome>();

  constructor({ base, values, path, judgements }: Ground, way: -1 | 1, work: WorkKind) {
    this.base = base;
    this.path = path;
    this.judgements = judgements;
    this.work = work;
    this.ladder = new Ladder(values, path, way);
  }

  private at(rung: number): Standing {
    let standing = this.standings.get(rung);
    if (standing === undefined) {
      standing = rung === 0 ? this.base : this.base.moved(this.path, this.ladder.at(rung));
      this.standings.set(rung, standing);
    }
    return standing;
  }

  private *outcome(rung: number): Steps<Outcome> {
    let outcome = this.outcomes.get(rung);
    if (outcome === undefined) {
      outcome = yield* consequencesOf(this.at(rung), this.judgements);
      this.outcomes.set(rung, outcome);
    }
    return outcome;
  }

  private *holds(rung: number, rule: CompiledRule): Steps<boolean> {
    return rung > 0 && (yield* this.at(rung).word(rule)) === "holds";
  }

  private change(rung: number): SizeChange {
    const { ladder, work, path } = this;
    const text = ladder.textAt(rung);
    return {
      path,
      label: fieldLabel(path),
      work,
      unit: ladder.value.unit,
      was: ladder.value.text,
      provenance: ladder.value.provenance,
      from: ladder.value.nominal,
      to: ladder.at(rung).nominal,
      step: ladder.step.si,
      steps: rung,
      ...(text === undefined ? {} : { text }),
    };
  }

  /** The nearest rung at which a rule holds. */
  nearest(rule: CompiledRule): Steps<Nearest> {
    return findNearest({
      count: this.ladder.count,
      lean: (rung) => this.at(rung).lean(rule),
      closely: (rung) => this.at(rung).closely(rule),
      holds: (rung) => this.holds(rung, rule),
    });
  }

  /** Whether a rule holds at a rung and nothing breaks, least of all what is feared. */
  private *isGood(rung: number, rule: CompiledRule, feared: readonly Judgement[]): Steps<boolean> {
    if (brokenNominally(this.at(rung), feared).length > 0) return false;
    return (yield* this.holds(rung, rule)) && (yield* this.outcome(rung)).broken.length === 0;
  }

  /** From a rung at which a rule holds outwards the first at which nothing breaks. */
  *goodFrom(nearest: number, rule: CompiledRule): Steps<number | undefined> {
    const { broken } = yield* this.outcome(nearest);
    if (broken.length === 0) return nearest;
    const feared = this.judgements.filter((one) => broken.some((other) => other.rule === one.rule.file.id));
    const isGood = (rung: number) => this.isGood(rung, rule, feared);
    let bad = nearest;
    for (let step = 1; nearest + step <= this.ladder.count; step *= 2) {
      const rung = nearest + step;
      if (this.at(rung).lean(rule) < 0) return undefined;
      if (yield* isGood(rung)) return yield* firstBetween(bad, rung, isGood);
      bad = rung;
      yield;
    }
    return undefined;
  }

  *remedy(rung: number, rule: CompiledRule): Steps<Remedy> {
    const verdict = yield* this.at(rung - 1).word(rule);
    const less = verdict === "holds" ? yield* this.outcome(rung - 1) : undefined;
    const { settled } = yield* this.outcome(rung);
    return {
      ...this.change(rung),
      oneStepLess: { verdict, breaks: (less?.broken ?? []).map((one) => one.rule) },
      settles: settled.filter((id) => id !== rule.file.id),
    };
  }

  /** Why this is no remedy. */
  *noRemedy({ rung, best }: Nearest, rule: CompiledRule): Steps<NoRemedy> {
    const head = { path: this.path, label: fieldLabel(this.path) };
    if (rung === undefined) {
      const loose = this.at(best).nominalWord(rule) === "holds";
      return { ...head, why: loose ? "too-loose" : "out-of-reach" };
    }
    const { broken } = yield* this.outcome(rung);
    return { ...head, why: "breaks", nearest: this.change(rung), breaks: broken };
  }
}
