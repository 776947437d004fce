import {
  type Comparison,
  confirmationPath,
  describeComparison,
  describeRelevance,
  doubtfulRelevance,
  type ReportVerdict,
} from "trialfit";
import { prettyUnits } from "../../data/prettyUnits.ts";

const CONFIRMATION = confirmationPath("");

/** What a comparison must be to decide a verdict of this word; of other verdicts none does alone. */
const DECIDES: Readonly<Record<string, (one: Comparison) => boolean>> = {
  fails: ({ state }) => state === "no",
  open: ({ state }) => state === "possible",
  unknown: ({ state }) => state === "missing",
};

/**
 * The one comparison that says at a glance why a verdict is what it is: what fails, what lies astride its limit, what
 * is missing; of one that holds, the first with a number. It says where that number was only assumed.
 * @returns its words, or undefined where a rule compares nothing
 */
export function glanceOf(judged: ReportVerdict): string | undefined {
  const { verdict, comparisons, assumed } = judged;
  const asked = verdict === "not-applicable" ? "when" : "requires";
  const own = comparisons.filter((one) => one.in === asked && !one.fact.startsWith(CONFIRMATION));
  const decides = DECIDES[verdict === "not-applicable" ? "fails" : verdict];
  const deciding = decides === undefined ? [] : own.filter(decides);
  // Of several ways one may fail and decide nothing.
  const one =
    deciding.find(({ alternative }) => !alternative) ??
    deciding[0] ??
    own.find(({ margin, state }) => margin !== undefined && state === "sure") ??
    own.find(({ margin }) => margin !== undefined);
  if (one === undefined) return undefined;
  const text = prettyUnits(asked === "when" ? describeRelevance(one) : describeComparison(one).text);
  const known = assumed.includes(one.fact) ? `${text} (assumed)` : text;
  return doubtfulRelevance(judged).length === 0
    ? known
    : `${known}; not known whether it is meant for this build`;
}
