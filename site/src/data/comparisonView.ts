import { type Comparison, describeComparison, fields } from "trialfit";
import { type BandPicture, bandPicture } from "./bandPicture.ts";
import { href } from "./href.ts";
import { factLabel, factPath, spaced } from "./names.ts";

/** One comparison of a verdict as a page shows it: plain data, so that a worker can hand it over. */
export interface ComparisonView {
  readonly label: string;
  /** Page of what is compared; undefined where it has none. */
  readonly href: string | undefined;
  /** What follows the label: value, limit, what is to spare. */
  readonly rest: string;
  readonly state: Comparison["state"];
  readonly picture: BandPicture | undefined;
}

/** A word of a choice that begins a text, with what it means: ` parent` is `: parent (bored in the block itself)`. */
function choiceInWords(fact: string, rest: string): string {
  const spec = fields.get(fact)?.spec;
  return spec?.kind !== "choice"
    ? rest
    : rest.replace(/^ ([\w-]+)/, (whole, word: string) => {
        const meaning = spec.options[word];
        return meaning === undefined ? whole : `: ${spaced(word)} (${meaning})`;
      });
}

export function comparisonView(comparison: Comparison): ComparisonView {
  const { fact, label, state } = comparison;
  const text = describeComparison(comparison).text;
  const path = factPath(fact);
  return {
    label: factLabel(fact),
    href: path === undefined ? undefined : href(path),
    rest: choiceInWords(fact, text.startsWith(label) ? text.slice(label.length) : `: ${text}`),
    state,
    picture: bandPicture(comparison),
  };
}
