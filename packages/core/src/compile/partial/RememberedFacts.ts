import type { Fact } from "../../judge/Fact.ts";
import { factOfDerivation, factOfField } from "../../judge/lookupOf.ts";
import type { FactColumns } from "../FactColumns.ts";
import { MISSING } from "../FactColumns.ts";
import type { FactPlan } from "../planQuantities.ts";
import { BandMemory } from "./BandMemory.ts";
import type { PartialValues } from "./PartialValues.ts";
import { TupleKeys } from "./TupleKeys.ts";

/** In place of the number of a combination: nothing stands in the slot. */
const NOTHING = -1;

/** One fact with what is remembered of it. */
interface Remembered {
  readonly plan: FactPlan;
  readonly keys: TupleKeys;
  /** Absent where its combinations are more than whole numbers can tell apart: then only the last one is known. */
  readonly memory: BandMemory | undefined;
  /** The combination that stands in the slot. */
  stands: number;
  standsFor: string;
}

/** Puts the facts of the combination that is chosen in their slots; each is worked out once for what can change it. */
export class RememberedFacts {
  /** Quantities that were derived. */
  derived = 0;
  private readonly facts: readonly Remembered[];
  private readonly columns: FactColumns;
  private readonly values: PartialValues;
  private readonly options: Int32Array;

  /** @param options the option that is chosen of each kind, to be changed from outside */
  constructor(plans: readonly FactPlan[], columns: FactColumns, values: PartialValues, options: Int32Array) {
    this.columns = columns;
    this.values = values;
    this.options = options;
    this.facts = plans.map((plan) => {
      const keys = new TupleKeys(plan);
      const memory = Number.isSafeInteger(keys.counts.at(-1)!) ? new BandMemory() : undefined;
      return { plan, keys, memory, stands: NOTHING, standsFor: "" };
    });
  }

  /** Whether a fact is settled by the kinds that are chosen. */
  isSettled(slot: number, chosen: number): boolean {
    const { differs, settledAt } = this.facts[slot]!.plan;
    return !differs && settledAt < chosen;
  }

  /**
   * Puts a fact in its slot where that costs little: a missing one, one of the build, one that is remembered.
   * @returns false where it must be derived; until then it is missing
   */
  put(slot: number, chosen: number): boolean {
    const fact = this.facts[slot]!;
    if (!this.isSettled(slot, chosen)) {
      this.clear(slot, fact);
      return true;
    }
    if (fact.memory === undefined) return this.putLast(slot, fact, chosen);
    const key = fact.keys.key(this.options);
    if (fact.stands === key) return true;
    const at = fact.memory.find(key);
    if (at < 0) {
      if (!fact.plan.isQuantity) {
        this.derive(slot, chosen);
        return true;
      }
      this.clear(slot, fact);
      return false;
    }
    const { columns, memory } = { columns: this.columns, memory: fact.memory };
    columns.low[slot] = memory.low(at);
    columns.high[slot] = memory.high(at);
    columns.lack[slot] = memory.lack(at);
    fact.stands = key;
    return true;
  }

  private putLast(slot: number, fact: Remembered, chosen: number): boolean {
    if (fact.stands !== NOTHING && fact.standsFor === this.combination(fact)) return true;
    this.clear(slot, fact);
    if (fact.plan.isQuantity) return false;
    this.derive(slot, chosen);
    return true;
  }

  private combination({ plan }: Remembered): string {
    return plan.levels.map((level, index) => plan.classes[index]!.of[this.options[level]!]).join();
  }

  private clear(slot: number, fact: Remembered): void {
    if (fact.stands === NOTHING) return;
    this.columns.clear(slot);
    fact.stands = NOTHING;
  }

  /** Derives a settled fact, remembers it and puts it in its slot. */
  derive(slot: number, chosen: number): void {
    const fact = this.facts[slot]!;
    this.columns.set(slot, this.work(fact.plan, chosen));
    const { low, high, lack } = this.columns;
    if (fact.memory === undefined) {
      fact.stands = 0;
      fact.standsFor = this.combination(fact);
      return;
    }
    fact.stands = fact.keys.key(this.options);
    fact.memory.keep(fact.stands, low[slot]!, high[slot]!, lack[slot] === 0 ? 0 : MISSING);
  }

  private work({ name, isQuantity }: FactPlan, chosen: number): Fact {
    if (!isQuantity) return factOfField(name, this.values.values(chosen, this.options).get(name));
    this.derived += 1;
    return factOfDerivation(this.values.derive(name, chosen, this.options));
  }
}
