import type { ChangedLimit, LimitFile, RuleFile } from "@trialfit/rules";
import { readRule } from "../judge/compileRule.ts";
import { DimensionError, parseDimension } from "../units/parseDimension.ts";

function numberIn(text: string, unit: string): number {
  try {
    return parseDimension(text, { unit }).nominal;
  } catch (error) {
    if (error instanceof DimensionError) return Number.NaN;
    throw error;
  }
}

/**
 * A rule with one limit as a shop sets it. Without a condition it holds for every build; with one it comes before the
 * cases that the rule has.
 * @param rule has the limit
 * @returns the rule, and whether the new value lies outside the range that the rule knows in the trade
 */
export function changeLimit(
  rule: RuleFile,
  { limit: name, value, when }: Pick<ChangedLimit, "limit" | "value" | "when">,
): { readonly file: RuleFile; readonly outsideRange: boolean } {
  const { cases, ...bare } = rule.limits![name]!;
  const unit = readRule(rule).rule.limits.find(({ fact }) => fact === `limit.${name}`)?.unit ?? "1";
  const number = numberIn(value, unit);
  const [least, most] = bare.range.map((text) => numberIn(text, unit)) as [number, number];
  const range: LimitFile["range"] = [
    number < least ? value : bare.range[0],
    number > most ? value : bare.range[1],
  ];
  const changed: LimitFile =
    when === undefined
      ? { ...bare, range, value }
      : { ...bare, range, cases: [{ when, value }, ...(cases ?? [])] };
  return {
    file: { ...rule, limits: { ...rule.limits, [name]: changed } },
    outsideRange: number < least || number > most,
  };
}
