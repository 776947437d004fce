import type { RuleExample } from "@trialfit/rules";
import { quantities } from "../derive/generated/quantities.ts";
import { type CompiledRule, leavesOf } from "../judge/CompiledRule.ts";
import { readRule } from "../judge/compileRule.ts";
import type { Lookup } from "../judge/decide.ts";
import { decideRule } from "../judge/decideRule.ts";
import { CONFIRMED, factType } from "../judge/factCatalog.ts";
import { exampleLookup } from "../judge/judgeExample.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import { isConfirmationPath } from "../read/confirmations.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import type { Mutant } from "./Mutant.ts";
import { judgedFacts, type ReadExample } from "./scoreRule.ts";
import { type TriedValue, triedValues } from "./triedValues.ts";

/** Verdicts that say most, first: an example should rather hold or fail than be open. */
const TELLING: readonly VerdictWord[] = ["holds", "fails", "not-applicable", "open", "unknown"];

/** As many facts of an example as are changed at once. */
const AT_ONCE = 2;

/** As many changed examples as are tried for one slip: a second of work at most. */
const MOST_TRIES = 40_000;

interface Try {
  readonly base: ReadExample;
  readonly changes: readonly TriedValue[];
  readonly verdict: VerdictWord;
}

function overlay(lookup: Lookup, changes: readonly TriedValue[]): Lookup {
  const over = new Map(changes.map(({ fact, value }) => [fact, value]));
  return (name) => over.get(name) ?? lookup(name);
}

function* combinations(values: readonly TriedValue[], size: number): Generator<readonly TriedValue[]> {
  if (size === 0) return void (yield []);
  for (const [index, first] of values.entries()) {
    const later = values.slice(index + 1).filter(({ fact }) => fact !== first.fact);
    for (const rest of combinations(later, size - 1)) yield [first, ...rest];
  }
}

function given(base: RuleExample, changes: readonly TriedValue[]): RuleExample["given"] {
  const name = (fact: string) => (isConfirmationPath(fact) ? CONFIRMED : fact);
  return { ...base.given, ...Object.fromEntries(changes.map(({ fact, text }) => [name(fact), text])) };
}

/** What sets the example apart: the words that were changed, and the numbers that are compared. */
function nameOf(
  rule: CompiledRule,
  changes: readonly TriedValue[],
  facts: RuleExample["given"],
  taken: ReadonlySet<string>,
): string {
  const compared = new Set(leavesOf(rule.requires).map((leaf) => leaf.fact));
  const isWord = (fact: string) => factType(fact)?.kind === "word";
  const plain = ([fact, text]: readonly [string, string]) =>
    isWord(fact) ? text.replace(/-/g, " ") : text.replace(/ ± 0$/, "");
  const all = Object.entries(facts);
  const names = [changes.map(({ fact, text }) => [fact, text] as const), all].map((about) => {
    const words = about.filter(([fact]) => isWord(fact));
    const numbers = [...about, ...all.filter(([fact]) => compared.has(fact))].filter(
      ([fact]) => !isWord(fact),
    );
    const at = [...new Set(numbers.map(plain))].join(" and ");
    return `${words.map(plain).join(", ")}${at === "" ? "" : ` at ${at}`}`.trim();
  });
  const spelt = (about: readonly (readonly [string, string])[]) =>
    about
      .map(([fact, text]) => `${quantities.get(fact)?.name ?? fieldLabel(fact)} ${plain([fact, text])}`)
      .join(", ");
  const changed = spelt(changes.map(({ fact, text }) => [fact, text] as const));
  return [...names, changed].find((name) => name.length >= 3 && !taken.has(name)) ?? spelt(all);
}

/** Whether the example is read as it was tried: a field can refuse a value, a quantity can rest on a changed one. */
function tells(rule: CompiledRule, mutant: CompiledRule, found: RuleExample): boolean {
  try {
    const lookup = exampleLookup(judgedFacts(rule), found);
    return decideRule(rule, lookup) === found.verdict && decideRule(mutant, lookup) !== found.verdict;
  } catch {
    return false;
  }
}

/**
 * An example that would notice a slip which no example of the rule notices: one of its examples with one or two
 * facts changed. What the rule says of it is proposed as its verdict; whether that is meant, a person decides.
 * @param examples the rule's examples that hold, with their facts
 * @returns undefined where nothing tells the two apart: then the part that was changed says nothing
 */
export function suggestExample(
  rule: CompiledRule,
  mutant: Mutant,
  examples: readonly ReadExample[],
): RuleExample | undefined {
  const changed = readRule(mutant.file).rule;
  const values = triedValues(rule, changed);
  const taken = new Set(examples.map(({ example }) => example.name));
  let left = MOST_TRIES;
  for (let size = 1; size <= AT_ONCE; size += 1) {
    const tries: Try[] = [];
    for (const base of examples) {
      for (const changes of combinations(values, size)) {
        left -= 1;
        if (left < 0) break;
        const lookup = overlay(base.lookup, changes);
        const verdict = decideRule(rule, lookup);
        if (verdict !== decideRule(changed, lookup)) tries.push({ base, changes, verdict });
      }
    }
    tries.sort((a, b) => TELLING.indexOf(a.verdict) - TELLING.indexOf(b.verdict));
    for (const { base, changes, verdict } of tries) {
      const facts = given(base.example, changes);
      const found = { name: nameOf(rule, changes, facts, taken), given: facts, verdict };
      if (tells(rule, changed, found)) return found;
    }
  }
  return undefined;
}
