import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { Lookup } from "../judge/decide.ts";
import { codeFor } from "./closures.ts";
import { FactColumns } from "./FactColumns.ts";
import { FactSlots } from "./FactSlots.ts";
import type { Margin } from "./margins.ts";
import { Outcome } from "./Outcome.ts";
import { RuleCompiler } from "./RuleCompiler.ts";
import { VerdictCode } from "./verdictCodes.ts";

/** Says of the facts in the slots what a rule says of a build: a code of {@link verdictCodes}. */
export type JudgeSlots = () => number;

/** Rules as functions over the slots of one build. */
export interface SlotRules {
  readonly slots: FactSlots;
  /** The facts that are judged; put others in and judge again. */
  readonly facts: FactColumns;
  /** One for each rule, in their order. */
  readonly judges: readonly JudgeSlots[];
  /** Of each rule: how far it is from its limits, as `PartialJudge.margin` says it. */
  readonly margins: readonly Margin[];
  /** Verdicts that `judgeAll` and `judge` gave so far. */
  readonly judged: number;
  /**
   * The verdict of every rule, as codes, in the order of the rules.
   * @param into where they go; a new list where it is left out
   */
  judgeAll(into?: Uint8Array): Uint8Array;
  /** The same after all facts were put in. */
  judge(lookup: Lookup, into?: Uint8Array): Uint8Array;
}

interface RuleFunctions {
  readonly judge: JudgeSlots;
  readonly margin: Margin;
}

function functionsOf(rule: CompiledRule, facts: FactColumns): RuleFunctions {
  const compiler = new RuleCompiler(rule, facts);
  const requires = compiler.condition(rule.requires);
  const when = rule.when === undefined ? undefined : compiler.condition(rule.when);
  const [before, cased] = [compiler.readsCases(rule.when), compiler.readsCases(rule.requires)];
  const judge: JudgeSlots =
    when === undefined && !cased
      ? () => codeFor(Outcome.yes, requires())
      : () => {
          if (before) compiler.placeLimits();
          const relevant = when === undefined ? Outcome.yes : when();
          if (relevant === Outcome.no) return codeFor(relevant, Outcome.no);
          if (cased && !before) compiler.placeLimits();
          return codeFor(relevant, requires());
        };
  const distance = compiler.margin(rule.requires);
  const margin = () => {
    const code = judge();
    if (code === VerdictCode.notApplicable) return Infinity;
    return code === VerdictCode.unknown ? Number.NaN : distance();
  };
  return { judge, margin };
}

/**
 * Compiles rules once to functions over numbered facts: the verdicts are those of `judgeAll`, without their
 * explanations and some hundred times sooner. A differential test holds them to json-rules-engine.
 */
export function compileSlots(rules: readonly CompiledRule[]): SlotRules {
  const slots = new FactSlots(rules);
  const facts = new FactColumns(slots);
  const functions = rules.map((rule) => functionsOf(rule, facts));
  const judges = functions.map(({ judge }) => judge);
  const margins = functions.map(({ margin }) => margin);
  let judged = 0;
  const judgeAll = (into: Uint8Array = new Uint8Array(judges.length)) => {
    for (let index = 0; index < judges.length; index += 1) into[index] = judges[index]!();
    judged += judges.length;
    return into;
  };
  return {
    slots,
    facts,
    judges,
    margins,
    get judged() {
      return judged;
    },
    judgeAll,
    judge: (lookup, into) => {
      facts.fill(lookup);
      return judgeAll(into);
    },
  };
}
