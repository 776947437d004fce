import { doubtfulRelevance, type ReportVerdict, type VerdictWord, verdictWords } from "trialfit";
import { type ComparisonView, comparisonView } from "./comparisonView.ts";
import { href } from "./href.ts";
import { factLabel, factPath } from "./names.ts";

/** Something that a verdict names: a field or quantity with its page. */
export interface NamedFact {
  readonly label: string;
  readonly href: string | undefined;
}

/** What a rule says of one build, as a page shows it: plain data, so that a worker can hand it over. */
export interface VerdictView {
  readonly verdict: VerdictWord;
  /** What follows the word: what it means. */
  readonly meaning: string;
  readonly comparisons: readonly ComparisonView[];
  readonly remedy: string | undefined;
  readonly reasons: readonly string[];
  readonly lists: readonly { readonly label: string; readonly facts: readonly NamedFact[] }[];
}

function named(name: string): NamedFact {
  const path = factPath(name);
  return { label: factLabel(name), href: path === undefined ? undefined : href(path) };
}

export function verdictView(verdict: ReportVerdict): VerdictView {
  const { missing, assumed, settleBy } = verdict;
  const applies = verdict.verdict !== "not-applicable";
  const asked = applies ? "requires" : "when";
  const doubtful = [...new Set(doubtfulRelevance(verdict).map(({ fact }) => fact))].map(named);
  return {
    verdict: verdict.verdict,
    meaning: verdict.toConfirm
      ? "cannot be judged until a person has looked"
      : verdictWords[verdict.verdict].replace(`${verdict.verdict} `, ""),
    comparisons: verdict.comparisons.filter((one) => one.in === asked).map(comparisonView),
    remedy: verdict.remedy,
    reasons: verdict.reasons,
    lists: [
      { label: "Missing", facts: missing.map(named) },
      { label: "Not known whether it is meant for this build: that rests on", facts: doubtful },
      { label: "Rests on assumed values", facts: assumed.map(named) },
      { label: "Measure first", facts: settleBy.map(named) },
    ].filter(({ facts }) => facts.length > 0),
  };
}
