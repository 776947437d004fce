import { nearestWord } from "./nearestWord.ts";
import { plainWords } from "./plainWords.ts";

/** Something that has a name, and a text that says what it is. */
export interface NamedThing {
  readonly id: string;
  readonly name: string;
  readonly meaning: string;
}

/** Share that a word counts for which stands in the text only. */
const IN_TEXT = 0.4;
/** Names that are given. */
const MOST = 3;
/** Those that count for less than this share of the best are left out. */
const NEAR = 0.6;
/** What accounts for less than this share of what was written is not what was meant. */
const ENOUGH = 0.35;
/** A shorter word is no beginning of another. */
const LEAST = 4;

/** Whether a word is another or, if it is long enough, its beginning. */
export const isWord = (word: string) => (one: string) =>
  one === word || (word.length >= LEAST && one.startsWith(word));

/**
 * What people may have meant by a name that does not exist: a slip of the pen first, then what has its words in its
 * name, and in the text that says what it is; a word counts the more, the fewer things have it.
 * @param name as it was written: `squishHeight`, `squish clearance`
 * @returns ids, the nearest first; none where no word stands in a name
 */
export function nearestNames(name: string, things: readonly NamedThing[]): readonly string[] {
  const near = nearestWord(
    name,
    things.map(({ id }) => id),
  );
  const told = things.map((thing) => ({
    thing,
    names: plainWords(`${thing.id} ${thing.name}`),
    text: plainWords(thing.meaning),
  }));
  const weights = plainWords(name).map((word) => {
    const having = told.filter(({ names }) => names.some(isWord(word))).length;
    return { word, weight: Math.log((1 + things.length) / Math.max(1, having)) };
  });
  const sum = (list: typeof weights) => list.reduce((all, { weight }) => all + weight, 0);
  const whole = sum(weights);
  const counted = told
    .map(({ thing, names, text }) => {
      const named = weights.filter(({ word }) => names.some(isWord(word)));
      const meant = weights.filter((one) => !named.includes(one) && text.some(isWord(one.word)));
      return { id: thing.id, count: named.length === 0 ? 0 : sum(named) + IN_TEXT * sum(meant) };
    })
    .filter(({ count }) => count > ENOUGH * whole)
    .sort((a, b) => b.count - a.count || a.id.length - b.id.length);
  const most = counted[0]?.count ?? 0;
  const ids = counted.filter(({ count }) => count >= NEAR * most).map(({ id }) => id);
  return [...new Set([...(near === undefined ? [] : [near]), ...ids])].slice(0, MOST);
}
