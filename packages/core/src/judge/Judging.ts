import type { Derivation } from "../derive/Derivation.ts";
import { placesOf } from "../derive/places.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import { Ground } from "./Ground.ts";
import type { Judged } from "./Judged.ts";
import { whereJudged } from "./whereJudged.ts";
import { worstPlace } from "./worstPlace.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Rules that are judged on the same grounds; of several grounds the worst stands for the rule. */
interface Bench {
  readonly rules: readonly CompiledRule[];
  /** Undefined: the engine as a whole. */
  readonly places?: readonly Ground[];
}

/**
 * The judging of one build, that can be looked at before it is done. Where dimensions were measured for each cylinder,
 * crankpin or main bearing, a rule that rests on them is judged at each, and the worst stands for the rule. A rule that
 * rests on main bearings and on cylinders is judged at each main bearing with the band over all cylinders.
 */
export class Judging {
  private readonly whole: Ground;
  private readonly benches: readonly Bench[];
  private readonly done = new Map<CompiledRule, Judged | undefined>();
  private readonly catalog: Catalog;
  private readonly rules: readonly CompiledRule[];

  /**
   * @param values fields of the build, defaults filled in
   * @param more quantities to derive beside those that the rules ask for
   */
  constructor(values: Values, rules: readonly CompiledRule[], catalog: Catalog, more: Iterable<string>) {
    this.catalog = catalog;
    this.rules = rules;
    const { whole, common, placed, differs } = whereJudged(values, rules, catalog);
    const asked = rules.flatMap((rule) => this.factsOf(rule));
    this.whole = new Ground(whole, catalog, [...asked, ...more]);
    this.benches = [
      { rules: common },
      ...placed.map(({ kind, rules: here }) => ({
        rules: here,
        places: placesOf(kind, values).map((place) => {
          const wanted = here.flatMap((rule) => this.factsOf(rule)).filter(differs);
          return new Ground(place.values, catalog, wanted, place.label);
        }),
      })),
    ];
  }

  private factsOf(rule: CompiledRule): readonly string[] {
    return rule.facts.filter((fact) => this.catalog.has(fact));
  }

  private grounds(): readonly Ground[] {
    return [this.whole, ...this.benches.flatMap(({ places }) => places ?? [])];
  }

  /** Quantities of the engine as a whole that were derived so far. */
  get derivations(): ReadonlyMap<string, Derivation> {
    return this.whole.deriver.results;
  }

  /**
   * Derives every quantity: first those that take no search, of the others those first whose extremes lie at ends of
   * inputs, then, after the nominal values of all, those that are searched inside of the tolerances too: those of few
   * inputs first, for a search costs about their square.
   */
  *derive(): Steps<void> {
    const open = this.grounds().flatMap(({ wanted, deriver }) =>
      [...wanted].filter((id) => deriver.known(id) === undefined).map((id) => ({ id, deriver })),
    );
    yield;
    const guarded = ({ id }: { id: string }) => this.catalog.get(id)!.shape === "guarded";
    for (const { id, deriver } of open.filter((one) => !guarded(one))) yield* deriver.derive(id);
    const breadth = ({ id, deriver }: (typeof open)[number]) => deriver.chain.finder.rootsOf(id).size;
    const dear = open.filter(guarded).sort((a, b) => breadth(a) - breadth(b));
    for (const { id, deriver } of dear) {
      deriver.nominal(id);
      yield;
    }
    for (const { id, deriver } of dear) yield* deriver.derive(id);
  }

  /** Counts everything that was found, to see whether there is more of it than before. */
  get found(): number {
    return this.grounds().reduce((sum, { deriver }) => sum + deriver.found, this.done.size);
  }

  /** Quantities of the engine as a whole that are still to be derived. */
  waiting(): readonly string[] {
    return [...this.whole.wanted].filter((id) => !this.derivations.has(id));
  }

  /** A quantity of the engine as a whole at the nominal values [SI], where that is known by now. */
  nominal(id: string): number | undefined {
    return this.whole.deriver.knownNominal(id);
  }

  /** Rules that were not judged yet. */
  pending(): readonly CompiledRule[] {
    return this.rules.filter((rule) => !this.done.has(rule));
  }

  /** Whether a rule is judged at places, not on the engine as a whole. */
  isPlaced(rule: CompiledRule): boolean {
    return this.benches.some(({ rules, places }) => places !== undefined && rules.includes(rule));
  }

  /** Judges every rule whose quantities are there by now. */
  async judgeReady(): Promise<void> {
    for (const { rules, places } of this.benches) {
      const grounds = places ?? [this.whole];
      const ready = rules.filter(
        (rule) => !this.done.has(rule) && this.factsOf(rule).every((fact) => this.isDerived(fact, grounds)),
      );
      if (ready.length === 0) continue;
      const found: (readonly Judged[])[] = [];
      for (const ground of grounds) found.push(await ground.judge(ready, this.derivations));
      for (const [index, rule] of ready.entries()) {
        const all = found.map((here) => here[index]!);
        this.done.set(rule, places === undefined ? all[0] : worstPlace(all));
      }
    }
  }

  private isDerived(fact: string, grounds: readonly Ground[]): boolean {
    return [this.whole, ...grounds].every(
      ({ wanted, deriver }) => !wanted.has(fact) || deriver.results.has(fact),
    );
  }

  /** What every judged rule says, in the order of the rules' ids. */
  judged(): readonly Judged[] {
    return this.rules
      .flatMap((rule) => this.done.get(rule) ?? [])
      .sort((a, b) => (a.rule.file.id < b.rule.file.id ? -1 : 1));
  }
}
