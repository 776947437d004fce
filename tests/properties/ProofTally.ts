import type { VerdictWord } from "trialfit";

/** What was found of one rule over all builds in which it was open. */
export interface Openness {
  /** Builds in which it is open. */
  open: number;
  /** Those of them in which engines within the tolerances really differ. */
  differing: number;
}

/** Counts of a proof, so that nothing passes that was not looked at. */
export class ProofTally {
  builds = 0;
  /** Random engines, each judged by every rule that is certain or open in its build. */
  pairs = 0;
  /** Verdicts of engines held to a certain verdict: random engines, and directed ones. */
  checked = { random: 0, directed: 0 };
  /** Engines within the tolerances that cannot be built, under a certain verdict: how often by rule. */
  readonly impossible = new Map<string, number>();
  /** Certain verdicts that an engine within the tolerances contradicts, each build and rule once. */
  readonly contradictions = new Set<string>();
  /** Verdicts of builds by word. */
  readonly words = new Map<VerdictWord, number>();
  readonly openness = new Map<string, Openness>();

  word(word: VerdictWord): void {
    this.words.set(word, (this.words.get(word) ?? 0) + 1);
  }

  /** Told at once: a long proof may be stopped before it ends. */
  contradict(what: string): void {
    if (!this.contradictions.has(what) && process.env.TRIALFIT_PAIRS !== undefined)
      process.stderr.write(`contradiction: ${what}\n`);
    this.contradictions.add(what);
  }

  cannotBe(rule: string): void {
    this.impossible.set(rule, (this.impossible.get(rule) ?? 0) + 1);
  }

  opened(rule: string, differs: boolean): void {
    const known = this.openness.get(rule) ?? { open: 0, differing: 0 };
    this.openness.set(rule, { open: known.open + 1, differing: known.differing + (differs ? 1 : 0) });
  }

  /** Builds and rules that are open, for each in which engines really differ; 1 is exact. */
  get ratio(): number {
    const all = [...this.openness.values()];
    const sum = (of: (one: Openness) => number) => all.reduce((total, one) => total + of(one), 0);
    return sum(({ open }) => open) / sum(({ differing }) => differing);
  }

  /** Rules that are open where no engine was found to differ, most often first. */
  get loose(): readonly (readonly [string, Openness])[] {
    return [...this.openness]
      .filter(([, { open, differing }]) => open > differing)
      .sort(([, a], [, b]) => b.open - b.differing - (a.open - a.differing));
  }
}
