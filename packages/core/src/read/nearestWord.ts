import { distance } from "fastest-levenshtein";

/** The known word nearest to a misspelled one, or undefined when none is near enough to be meant. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  let best: { word: string; steps: number } | undefined;
  for (const candidate of known) {
    const steps = distance(lower, candidate.toLowerCase());
    if (best === undefined || steps < best.steps) best = { word: candidate, steps };
  }
  return best !== undefined && best.steps <= Math.max(word.length > 3 ? 2 : 1, Math.floor(word.length / 3))
    ? best.word
    : undefined;
}
