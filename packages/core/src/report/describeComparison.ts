import type { Operator } from "@trialfit/rules";
import type { Comparison } from "../judge/Verdict.ts";
import { formatInterval, formatNumber, type NumberStyle } from "../units/formatNumber.ts";
import { printBand } from "./printValue.ts";
import type { BandBar, DocumentLine } from "./ReportDocument.ts";

/** Operators in words, as they stand before a limit. */
export const operatorWords: Readonly<Record<Operator, string>> = {
  greaterThan: "more than",
  greaterThanInclusive: "at least",
  lessThan: "less than",
  lessThanInclusive: "at most",
  equal: "",
  notEqual: "not",
  in: "one of:",
  notIn: "none of:",
};

function styleOf({ decimals }: Comparison): NumberStyle {
  return decimals === undefined ? {} : { decimals };
}

/** A distance from a limit; what would round to nothing still lies on one side of it. */
function printMargin(distance: number, unit: string, style: NumberStyle): string {
  const text = formatInterval(distance, unit, style);
  const nothing = formatInterval(0, unit, style);
  return distance > 0 && text === nothing
    ? text.replace(/^[\d.]+/, (zero) => `less than ${zero.replace(/.$/, "1")}`)
    : text;
}

function marginText(comparison: Comparison): string {
  const { margin, unit, operator } = comparison;
  if (margin === undefined || unit === undefined) return "";
  const print = (value: number) => printMargin(Math.abs(value), unit, styleOf(comparison));
  const word = margin.nominal >= 0 ? "to spare" : operator.startsWith("greater") ? "short" : "over";
  const worst =
    print(margin.low) === print(margin.nominal)
      ? ""
      : `; at worst ${print(margin.low)} ${margin.low >= 0 ? "to spare" : operator.startsWith("greater") ? "short" : "over"}`;
  return `: ${print(margin.nominal)} ${word}${worst}`;
}

function barOf(comparison: Comparison): BandBar | undefined {
  const { value, against, unit } = comparison;
  if (unit === undefined || typeof value !== "object" || against === undefined || !("low" in against))
    return undefined;
  return {
    low: value.low,
    nominal: value.nominal,
    high: value.high,
    limitLow: against.low,
    limitHigh: against.high,
    limitText: `${operatorWords[comparison.operator]} ${printBand(against, unit)}`,
    print: (number) => formatNumber(number, unit, styleOf(comparison)),
  };
}

/** Comparisons of remembered verdicts are the same objects in one report after the other. */
const described = new WeakMap<Comparison, DocumentLine>();

/** One comparison as a line: the value with its band, the limit, and what is to spare or short. */
export function describeComparison(comparison: Comparison): DocumentLine {
  let line = described.get(comparison);
  if (line === undefined) {
    line = lineOf(comparison);
    described.set(comparison, line);
  }
  return line;
}

/** What is compared, and what it is to be: `Bore 86.00 mm`, `at least 80 mm`. */
function sidesOf({ value, against, unit, label, operator, decimals }: Comparison) {
  const limit =
    against === undefined
      ? "another value that is missing"
      : "low" in against
        ? printBand(against, unit ?? "1")
        : (against as readonly string[]).join(", ");
  const shown =
    value === undefined
      ? `${label}: missing`
      : `${label} ${typeof value === "string" ? value : printBand(value, unit ?? "1", decimals)}`;
  return { shown, wanted: `${operatorWords[operator]} ${limit}`.trim() };
}

/** For what a rule is meant, and what the build has instead, in words: nothing is short or to spare there. */
export function describeRelevance(comparison: Comparison): string {
  const { shown, wanted } = sidesOf(comparison);
  const { value, label } = comparison;
  return `${typeof value === "string" ? `${label}: ${value}` : shown}; the rule is meant for ${wanted}`;
}

function lineOf(comparison: Comparison): DocumentLine {
  const { shown, wanted } = sidesOf(comparison);
  if (comparison.value === undefined)
    return { text: `${shown}; must be ${wanted}`, tone: "doubt", comparison };
  const bar = barOf(comparison);
  return {
    text: `${shown}, must be ${wanted}${marginText(comparison)}`,
    ...(bar === undefined ? {} : { bar }),
    comparison,
  };
}
