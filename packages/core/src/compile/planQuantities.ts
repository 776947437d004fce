import { quantities } from "../derive/generated/quantities.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decidingFacts } from "../judge/decidingFacts.ts";
import { FactSlots } from "./FactSlots.ts";
import type { PartialJudgeInput } from "./PartialJudge.ts";
import { Influences } from "./partial/Influences.ts";
import { type Classes, PartClasses } from "./partial/PartClasses.ts";

/** On which levels something rests, and which parts of each are the same to it. */
export interface Rests {
  /** From the first; every level whose parts give a field that can decide it. */
  readonly levels: readonly number[];
  /** Of each of these levels: parts that are the same to it. */
  readonly classes: readonly Classes[];
  /** The last of these levels, with which it is settled; −1: it is the same whatever is chosen. */
  readonly settledAt: number;
}

/** A fact in a search: when it is settled, and for which combinations it is worked out once. */
export interface FactPlan extends Rests {
  readonly name: string;
  /** True for what is computed, false for what stands in the build. */
  readonly isQuantity: boolean;
  /** True where it may differ from place to place in the engine. */
  readonly differs: boolean;
}

/** A rule in a search. */
export interface RulePlan extends Rests {
  readonly rule: CompiledRule;
  /**
   * True where a fact may differ from place to place in the engine: it is judged at each place, once all is settled
   * that says where. Until then such facts count as missing.
   */
  readonly isPlaced: boolean;
}

/** What is worked out when, while parts are chosen kind after kind. */
export interface QuantityPlan {
  readonly slots: FactSlots;
  /** By slot. */
  readonly facts: readonly FactPlan[];
  /** In the order in which they were given. */
  readonly rules: readonly RulePlan[];
  /** By level: rules of which that level settles a fact, in their order. */
  readonly newsAt: readonly (readonly number[])[];
  /** By level: rules that are settled with it or later. */
  readonly settledFrom: readonly (readonly number[])[];
  /** By level: parts that no rule can tell apart. */
  readonly classes: readonly Classes[];
}

/** Refuses a field that two kinds give: which of them stands would hang on their order. @throws RangeError */
function refuseShared({ kinds }: PartialJudgeInput, classes: PartClasses): void {
  const owners = new Map<string, number>();
  for (const [level, paths] of classes.fields.entries())
    for (const path of paths) {
      const other = owners.get(path);
      if (other !== undefined)
        throw new RangeError(
          `found ${path} in parts of the kinds ${kinds[other]!.name} and ${kinds[level]!.name}; expected it in one`,
        );
      owners.set(path, level);
    }
}

function restsOn(classes: PartClasses, paths: ReadonlySet<string>): Rests {
  const levels = [...classes.fields.keys()].filter((level) =>
    [...classes.fields[level]!].some((path) => paths.has(path)),
  );
  return {
    levels,
    classes: levels.map((level) => classes.by(level, paths)),
    settledAt: levels.at(-1) ?? -1,
  };
}

const union = (sets: readonly ReadonlySet<string>[]): ReadonlySet<string> =>
  new Set(sets.flatMap((set) => [...set]));

/**
 * Plans what is worked out when parts are chosen kind after kind: on which kinds each fact and rule may rest, by
 * whatever way to it and by whatever default, and which parts are one and the same to it. What rests on the crankshaft
 * alone is so worked out once for each different crankshaft, not for each engine.
 * @throws RangeError when two kinds give the same field
 */
export function planQuantities(input: PartialJudgeInput): QuantityPlan {
  const { fixed, kinds, rules } = input;
  const slots = new FactSlots(rules);
  const classes = new PartClasses(kinds);
  refuseShared(input, classes);
  const influences = new Influences(quantities, [
    fixed.values,
    ...kinds.flatMap(({ options }) => options.map(({ values }) => values)),
  ]);
  const facts = slots.names.map(
    (name): FactPlan => ({
      name,
      isQuantity: quantities.has(name),
      differs: influences.differs(name),
      ...restsOn(classes, influences.of(name)),
    }),
  );
  const plans = rules.map((rule): RulePlan => {
    const names = [...decidingFacts(rule)];
    const isPlaced = names.some((name) => influences.differs(name));
    // Where it is judged hangs on what its texts name, too.
    const deciding = isPlaced ? [...names, ...rule.facts] : names;
    const paths = union(deciding.map((name) => influences.of(name)));
    return {
      rule,
      isPlaced,
      ...restsOn(classes, paths),
    };
  });
  const all = union(slots.names.map((name) => influences.of(name)));
  const those = (holds: (plan: RulePlan) => boolean) =>
    plans.flatMap((plan, index) => (holds(plan) ? [index] : []));
  const settlesFact = ({ rule }: RulePlan, level: number) =>
    [...decidingFacts(rule)]
      .map((name) => facts[slots.slotOf(name)]!)
      .some(({ differs, settledAt }) => !differs && settledAt === level);
  return {
    slots,
    facts,
    rules: plans,
    newsAt: kinds.map((_, level) =>
      those((plan) => settlesFact(plan, level) || (plan.isPlaced && plan.settledAt === level)),
    ),
    settledFrom: kinds.map((_, level) => those(({ settledAt }) => settledAt >= level)),
    classes: kinds.map((_, level) => classes.by(level, all)),
  };
}
