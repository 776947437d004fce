import type { RuleExample, RuleFile } from "@trialfit/rules";
import { readRule } from "../../judge/compileRule.ts";
import { decideRule } from "../../judge/decideRule.ts";
import { factType } from "../../judge/factCatalog.ts";
import { exampleLookup } from "../../judge/judgeExample.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import { adviseRule } from "../adviseRule.ts";
import { moveNumber } from "../moveNumber.ts";
import { judgedFacts } from "../scoreRule.ts";
import { numberText } from "../triedValues.ts";

const unknown: RuleExample = { name: "not known yet", given: {}, verdict: "unknown" };

/** Examples inside, on and outside a limit, with the verdict that the rule gives. */
function aroundLimit(file: RuleFile, fact: string, limit: string): readonly RuleExample[] {
  const type = factType(fact);
  if (type?.kind !== "number") return [];
  const [below, above] = moveNumber(limit, fact);
  const { rule } = readRule(file);
  const named = [
    ["below the limit", below],
    ["on the limit", limit],
    ["above the limit", above],
  ] as const;
  return named.flatMap(([name, text]) => {
    if (text === undefined) return [];
    const written = numberText(fact, parseDimension(text, { unit: type.unit }).nominal, type.unit);
    if (written === undefined) return [];
    const given = { [fact]: written };
    try {
      return [{ name, given, verdict: decideRule(rule, exampleLookup(judgedFacts(rule), { given })) }];
    } catch {
      return [];
    }
  });
}

/**
 * The first examples of a new rule, as many as notice every slip in it.
 * @param limit the limit as it was typed; undefined where words are compared
 */
export function firstExamples(
  file: RuleFile,
  fact: string,
  limit: string | undefined,
): readonly RuleExample[] {
  const around = limit === undefined ? [] : aroundLimit(file, fact, limit);
  const examples = [...around, unknown];
  return [...examples, ...adviseRule({ ...file, examples }).add];
}
