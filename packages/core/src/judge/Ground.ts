import type { Derivation } from "../derive/Derivation.ts";
import { Deriver } from "../derive/Deriver.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Judged } from "./Judged.ts";
import { judgeAll } from "./judgeAll.ts";
import { lookupOf } from "./lookupOf.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** What rules are judged on: the engine as a whole or one place in it, with the quantities that are wanted there. */
export class Ground {
  readonly wanted: ReadonlySet<string>;
  readonly deriver: Deriver;
  private readonly values: Values;
  private readonly label: string | undefined;

  /** @param label of the place, for people: `cylinder 3`; undefined for the engine as a whole */
  constructor(values: Values, catalog: Catalog, wanted: Iterable<string>, label?: string) {
    this.values = values;
    this.wanted = new Set(wanted);
    this.deriver = new Deriver(values, catalog);
    this.label = label;
  }

  /**
   * Judges rules whose quantities are all there.
   * @param whole quantities of the engine as a whole: they serve wherever nothing that they rest on differs
   */
  async judge(
    rules: readonly CompiledRule[],
    whole: ReadonlyMap<string, Derivation>,
  ): Promise<readonly Judged[]> {
    const { values, deriver, label } = this;
    const derivations = label === undefined ? deriver.results : new Map([...whole, ...deriver.results]);
    const verdicts = await judgeAll(rules, lookupOf(values, derivations));
    const more = { chain: deriver.chain, ...(label === undefined ? {} : { at: label }) };
    return rules.map(
      (rule, index): Judged => ({ rule, verdict: verdicts[index]!, values, derivations, ...more }),
    );
  }
}
