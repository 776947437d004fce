import { type CompiledRule, fieldLabel, fields, leavesOf, quantities } from "trialfit";
import { rules } from "./catalog.ts";
import { glossary, type Term } from "./glossary.ts";
import { factLabel } from "./names.ts";

/** Anchor of a term on the glossary's page. */
export function termAnchor({ term }: Term): string {
  return `term-${term.toLowerCase().replace(/[^a-z]+/g, "-")}`;
}

const patterns: ReadonlyMap<Term, RegExp> = new Map(
  glossary.map((term) => {
    const spellings = [term.term, ...term.also, ...term.wordings].map((one) =>
      one.toLowerCase().replace(/\s+/g, "\\s+"),
    );
    return [term, new RegExp(`(?<![\\w-])(?:${spellings.join("|")})(?:s|es)?(?![\\w-])`)];
  }),
);

const isIn = (term: Term, text: string): boolean => patterns.get(term)!.test(text);

/** Terms that a text uses, each once, in the order of the glossary. */
export function termsIn(text: string): readonly Term[] {
  const low = text.toLowerCase();
  return glossary.filter((term) => isIn(term, low));
}

/** Everything that a rule says to people. */
export function ruleTexts({ file, requires }: CompiledRule): string {
  const { title, because, otherwise, caution = "", disputed = "", confirm } = file;
  const labels = leavesOf(requires).map(({ fact }) => factLabel(fact));
  return [title, because, otherwise.do, caution, disputed, ...Object.values(confirm ?? {}), ...labels].join(
    " ",
  );
}

/** Where a term is used. */
export interface TermUse {
  readonly fields: readonly string[];
  readonly quantities: readonly string[];
  readonly rules: readonly CompiledRule[];
}

interface Indexed<T> {
  readonly item: T;
  readonly text: string;
}

const lower = <T>(item: T, text: string): Indexed<T> => ({ item, text: text.toLowerCase() });
const fieldIndex = [...fields].map(([path, { spec }]) => lower(path, `${fieldLabel(path)}. ${spec.help}`));
const quantityIndex = [...quantities.values()].map(({ id, name, meaning }) =>
  lower(id, `${name}. ${meaning}`),
);
const ruleIndex = rules.map((rule) => lower(rule, ruleTexts(rule)));

function using<T>(index: readonly Indexed<T>[], term: Term): readonly T[] {
  return index.filter(({ text }) => isIn(term, text)).map(({ item }) => item);
}

/** Fields, quantities and rules whose texts use a term. */
export function useOf(term: Term): TermUse {
  return {
    fields: using(fieldIndex, term),
    quantities: using(quantityIndex, term),
    rules: using(ruleIndex, term),
  };
}
