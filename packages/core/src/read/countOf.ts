/** A number with its noun: `1 rule`, `2 rules`. Nouns with another plural give it. */
export function countOf(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}
