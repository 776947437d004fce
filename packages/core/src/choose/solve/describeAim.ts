import type { DocumentItem } from "../../report/ReportDocument.ts";
import { unitOf } from "../../units/findUnit.ts";
import { formatInterval, formatNumber } from "../../units/formatNumber.ts";
import type { SolvedAim } from "./Solution.ts";

const kindWords = { equal: "", least: "at least ", most: "at most " } as const;
/** Digits of an allowance. */
const DIGITS = 2;

/** More digits than this say nothing. */
const MOST_MORE = 6;

/** Decimals in which an aim that is missed is seen to be missed; those of its quantity where it is met. */
export function decimalsOf({ unit, decimals, wanted, allowance, reached, met }: SolvedAim): number {
  if (met || reached === undefined) return decimals;
  const shown = (value: number, more: number) => formatNumber(value, unit, { decimals: decimals + more });
  const marks = [wanted, wanted - allowance, wanted + allowance];
  for (let more = 0; more < MOST_MORE; more += 1)
    if (marks.every((mark) => shown(mark, more) !== shown(reached, more))) return decimals + more;
  return decimals + MOST_MORE;
}

const print = (aim: SolvedAim, value: number): string =>
  formatNumber(value, aim.unit, { decimals: decimalsOf(aim) });

function allowanceText({ unit, allowance }: SolvedAim): string {
  return formatInterval(allowance, unitOf(unit).symbol, { digits: DIGITS });
}

/** What is wanted, as the build file may say it: `0.000 mm to 0.100 mm`, `10.50 ± 0.05`, `at least 1.500`. */
export function wantedText(aim: SolvedAim): string {
  const { kind, wanted, allowance, stated, isRange } = aim;
  if (isRange) return `${print(aim, wanted - allowance)} to ${print(aim, wanted + allowance)}`;
  return `${kindWords[kind]}${print(aim, wanted)}${stated ? ` ± ${allowanceText(aim)}` : ""}`;
}

/** What an aim comes to: `10.49`. */
export function reachedText(aim: SolvedAim): string {
  return aim.reached === undefined ? "no value: the sizes contradict each other" : print(aim, aim.reached);
}

/** Within what an aim counts as met that is not the wanted value to the last digit, where nothing was stated. */
function withinText(aim: SolvedAim): string {
  const { kind, wanted, reached, stated, met } = aim;
  if (!met || stated || reached === undefined || print(aim, reached) === print(aim, wanted)) return "";
  if ((kind === "least" && reached >= wanted) || (kind === "most" && reached <= wanted)) return "";
  return `, within ${kind === "equal" ? "± " : ""}${allowanceText(aim)}: as near as was found on these steps`;
}

/** An aim, what it comes to, and whether that is as wanted. */
export function describeAim(aim: SolvedAim): DocumentItem {
  const { name, id, met } = aim;
  const reached = aim.reached === undefined ? reachedText(aim) : `${reachedText(aim)} reached`;
  return {
    title: name,
    id,
    tone: met ? "good" : "bad",
    lines: [
      { label: met ? "met" : "not met", text: `${wantedText(aim)} wanted; ${reached}${withinText(aim)}` },
    ],
  };
}
