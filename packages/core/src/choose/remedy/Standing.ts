import { finish, type Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import { decideRule, decideWithMissing } from "../../judge/decideRule.ts";
import { decidingFacts } from "../../judge/decidingFacts.ts";
import { exactly, type Fact } from "../../judge/Fact.ts";
import { factOfDerivation, factOfField } from "../../judge/lookupOf.ts";
import type { VerdictWord } from "../../judge/Verdict.ts";
import { worstWord } from "../../judge/worstPlace.ts";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { leanOf } from "./leanOf.ts";
import type { StateFacts } from "./StateFacts.ts";

/** What rules say of one state of a build; whatever is asked is worked out once. */
export class Standing {
  private readonly facts: StateFacts;
  private readonly words = new Map<CompiledRule, VerdictWord>();

  constructor(facts: StateFacts) {
    this.facts = facts;
  }

  /** The same build with one dimension at another size. */
  moved(path: string, value: DimensionValue): Standing {
    return new Standing(this.facts.moved(path, value));
  }

  /** The same build with what stands under some paths kept more closely. */
  narrowed(paths: Iterable<string>, share: number): Standing {
    return new Standing(this.facts.narrowed(paths, share));
  }

  /** What a rule says over the whole band: at its worst place, where it is judged at several. */
  *word(rule: CompiledRule): Steps<VerdictWord> {
    let word = this.words.get(rule);
    if (word === undefined) {
      word = yield* this.decide(rule, (fact, spot) => this.wholly(fact, rule, spot));
      this.words.set(rule, word);
    }
    return word;
  }

  /** The same by the short way of {@link lean}, to be confirmed. */
  shortWord(rule: CompiledRule): VerdictWord {
    return finish(this.decide(rule, (fact, spot) => this.shortly(fact, rule, spot)));
  }

  private *decide(
    rule: CompiledRule,
    quantity: (fact: string, spot: number) => Steps<Fact>,
  ): Steps<VerdictWord> {
    const words: VerdictWord[] = [];
    for (const [spot, fields] of this.facts.fieldsAt(rule).entries())
      words.push(decideRule(rule, yield* this.known(rule, fields, spot, quantity)));
    return worstWord(words);
  }

  /** Fields that are missing where a rule is unknown over the whole band; empty where it is not. */
  *missing(rule: CompiledRule): Steps<readonly string[]> {
    // What is missing is missing at the nominal values, too; those are quickly asked.
    const lacks = (known: Lookup) => [...decidingFacts(rule)].some((fact) => known(fact).kind === "missing");
    if (!this.nominally(rule).some(lacks)) return [];
    const places = yield* this.places(rule);
    return [...new Set(places.flatMap((known) => decideWithMissing(rule, known).missing))].sort();
  }

  /** What a rule compares over the whole band, at each place where it is judged. */
  *places(rule: CompiledRule): Steps<readonly Lookup[]> {
    const places: Lookup[] = [];
    for (const [spot, fields] of this.facts.fieldsAt(rule).entries())
      places.push(yield* this.known(rule, fields, spot, (fact) => this.wholly(fact, rule, spot)));
    return places;
  }

  /** What a rule says at the nominal values: what it does not say there it cannot surely say over the band. */
  nominalWord(rule: CompiledRule): VerdictWord {
    return worstWord(this.nominally(rule).map((known) => decideRule(rule, known)));
  }

  /** How far a rule is from holding at the nominal values, as {@link leanOf} says it. */
  nominalLean(rule: CompiledRule): number {
    return Math.min(...this.nominally(rule).map((known) => leanOf(rule, known)));
  }

  /** What a rule compares at the nominal values, at each place where it is judged. */
  nominally(rule: CompiledRule): readonly Lookup[] {
    const { facts } = this;
    return facts.fieldsAt(rule).map((fields, spot) => (fact) => {
      if (facts.isQuantity(fact)) return asFact(fact, facts.nominal(fact, rule, spot));
      const entered = factOfField(fact, fields.get(fact));
      return entered.kind === "band" ? exactly(entered.nominal) : entered;
    });
  }

  /**
   * How far a rule is from holding here, as {@link leanOf} says it, by a short way: a quantity whose band takes a search
   * keeps the band of the build as it is around its new nominal value.
   */
  lean(rule: CompiledRule): number {
    return finish(this.leaning(rule, (fact, spot) => this.shortly(fact, rule, spot)));
  }

  /** The same over the whole band. */
  closely(rule: CompiledRule): Steps<number> {
    return this.leaning(rule, (fact, spot) => this.wholly(fact, rule, spot));
  }

  private *leaning(rule: CompiledRule, quantity: (fact: string, spot: number) => Steps<Fact>): Steps<number> {
    let least = Number.POSITIVE_INFINITY;
    for (const [spot, fields] of this.facts.fieldsAt(rule).entries())
      least = Math.min(least, leanOf(rule, yield* this.known(rule, fields, spot, quantity)));
    return least;
  }

  private *wholly(fact: string, rule: CompiledRule, spot: number): Steps<Fact> {
    return factOfDerivation(yield* this.facts.derivation(fact, rule, spot));
  }

  private *shortly(fact: string, rule: CompiledRule, spot: number): Steps<Fact> {
    const { facts } = this;
    const before = facts.isDear(fact) ? yield* facts.before(fact, rule, spot) : undefined;
    if (before?.state !== "value") return yield* this.wholly(fact, rule, spot);
    const nominal = facts.nominal(fact, rule, spot);
    if (nominal === undefined) return asFact(fact, nominal);
    const shift = nominal - before.nominal;
    return { kind: "band", low: before.low + shift, nominal, high: before.high + shift, missing: [] };
  }

  /** What a rule compares, at one spot. */
  private *known(
    rule: CompiledRule,
    fields: ReadonlyMap<string, FieldValue>,
    spot: number,
    quantity: (fact: string, spot: number) => Steps<Fact>,
  ): Steps<Lookup> {
    const known = new Map<string, Fact>();
    for (const fact of decidingFacts(rule))
      known.set(
        fact,
        this.facts.isQuantity(fact) ? yield* quantity(fact, spot) : factOfField(fact, fields.get(fact)),
      );
    return (fact) => known.get(fact)!;
  }
}

function asFact(name: string, value: number | undefined): Fact {
  return value === undefined ? { kind: "missing", missing: [name] } : exactly(value);
}
