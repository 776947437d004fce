import type { Weight } from "@trialfit/rules";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { fieldLabel } from "../../read/fieldCatalog.ts";
import { Effects } from "./Effects.ts";
import { findNearest, firstBetween, type Nearest } from "./findNearest.ts";
import type { Ground } from "./Ground.ts";
import { Ladder } from "./Ladder.ts";
import { nominalRung } from "./nominalRung.ts";
import { ownTolerance } from "./ownTolerance.ts";
import type { NoRemedy, Remedy, SizeChange } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";
import type { WorkKind } from "./works.ts";

/** One dimension of a build made larger, or made smaller, by one kind of work. */
export class Way {
  readonly work: WorkKind;
  private readonly path: string;
  private readonly base: Standing;
  private readonly ladder: Ladder;
  private readonly effects: Effects;
  private readonly standings = new Map<number, Standing>();
  private readonly nearests = new Map<CompiledRule, Nearest>();

  constructor({ base, values, path, judgements }: Ground, way: -1 | 1, work: WorkKind) {
    this.base = base;
    this.path = path;
    this.work = work;
    this.ladder = new Ladder(values, path, way);
    this.effects = new Effects(base, (rung) => this.at(rung), judgements);
  }

  private at(rung: number): Standing {
    let standing = this.standings.get(rung);
    if (standing === undefined) {
      standing = rung === 0 ? this.base : this.base.moved(this.path, this.ladder.at(rung));
      this.standings.set(rung, standing);
    }
    return standing;
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
      was: ladder.value.text,
      provenance: ladder.value.provenance,
      unit: ladder.value.unit,
      from: ladder.value.nominal,
      to: ladder.at(rung).nominal,
      step: ladder.step.si,
      steps: rung,
      ...(text === undefined ? {} : { text }),
    };
  }

  /** The nearest rung at which a rule holds. */
  private *nearest(rule: CompiledRule): Steps<Nearest> {
    let nearest = this.nearests.get(rule);
    if (nearest === undefined) {
      nearest = yield* findNearest({
        count: this.ladder.count,
        lean: (rung) => this.at(rung).lean(rule),
        closely: (rung) => this.at(rung).closely(rule),
        holds: (rung) => this.holds(rung, rule),
      });
      this.nearests.set(rule, nearest);
    }
    return nearest;
  }

  /**
   * The first rung, from the nearest at which a rule holds outwards, at which it holds and nothing breaks.
   * @param least the lightest weight of what must not break
   */
  *good(rule: CompiledRule, least: Weight): Steps<number | undefined> {
    const { effects } = this;
    const { rung: nearest } = yield* this.nearest(rule);
    if (nearest === undefined) return undefined;
    const { broken } = yield* effects.outcome(nearest, least);
    if (broken.length === 0) return nearest;
    const isGood = function* (this: Way, rung: number): Steps<boolean> {
      if (effects.stillBroken(rung, broken)) return false;
      return (yield* this.holds(rung, rule)) && (yield* effects.outcome(rung, least)).broken.length === 0;
    }.bind(this);
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

  *remedy(rung: number, rule: CompiledRule, least: Weight): Steps<Remedy> {
    const { effects } = this;
    const verdict = yield* this.at(rung - 1).word(rule);
    const less = verdict === "holds" ? yield* effects.outcome(rung - 1, least) : undefined;
    const { broken, settled } = yield* effects.all(rung);
    return {
      ...this.change(rung),
      oneStepLess: { verdict, breaks: (less?.broken ?? []).map((one) => one.rule) },
      settles: settled.filter((id) => id !== rule.file.id),
      brings: broken,
      worsens: yield* effects.worsened(rung, rule),
      contradicts: [],
    };
  }

  /**
   * Why this is no remedy.
   * @param closer whether it is asked how closely what is too loose would have to be kept
   */
  *noRemedy(rule: CompiledRule, least: Weight, closer: boolean): Steps<NoRemedy> {
    const head = { path: this.path, label: fieldLabel(this.path) };
    const { rung, best } = yield* this.nearest(rule);
    if (rung !== undefined) {
      const { broken } = yield* this.effects.outcome(rung, least);
      return { ...head, why: "breaks", nearest: this.change(rung), breaks: broken };
    }
    const { count } = this.ladder;
    const loose = yield* nominalRung({ count, at: (one) => this.at(one), rule, best });
    const needs = yield* this.at(loose ?? best).missing(rule);
    if (loose === undefined && needs.length === 0) return { ...head, why: "out-of-reach" };
    const there = loose ?? best;
    const own =
      loose === undefined || !closer ? undefined : yield* ownTolerance(this.base, this.ladder, loose, rule);
    return {
      ...head,
      why: loose === undefined ? "unknown" : "too-loose",
      ...(there === 0 ? {} : { nearest: this.change(there) }),
      ...this.effects.nominally(there, rule),
      ...(needs.length === 0 ? {} : { needs }),
      ...(own === undefined ? {} : { closer: { own } }),
    };
  }
}
