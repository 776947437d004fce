/** One state of the file, and what made it of the one before. */
interface Step {
  readonly text: string;
  /** What was changed; steps of one field in a row are one step. */
  readonly by: string;
}

const MOST_STEPS = 200;

/** The states of the build file that the page has been through. Never changed: every method gives a new one. */
export class History {
  private readonly steps: readonly Step[];
  private readonly at: number;

  constructor(steps: readonly Step[] = [], at = -1) {
    this.steps = steps;
    this.at = at;
  }

  get text(): string | undefined {
    return this.steps[this.at]?.text;
  }

  get canUndo(): boolean {
    return this.at > 0;
  }

  get canRedo(): boolean {
    return this.at < this.steps.length - 1;
  }

  /** What undoing would take back. */
  get last(): string {
    return this.steps[this.at]?.by ?? "";
  }

  /** A new state after this one; what had been undone is gone. */
  push(text: string, by: string): History {
    if (text === this.text) return this;
    const kept = this.steps.slice(0, this.at + 1);
    const joins = by !== "" && kept.at(-1)?.by === by && kept.length > 1;
    const steps = [...(joins ? kept.slice(0, -1) : kept), { text, by }].slice(-MOST_STEPS);
    return new History(steps, steps.length - 1);
  }

  undo(): History {
    return this.canUndo ? new History(this.steps, this.at - 1) : this;
  }

  redo(): History {
    return this.canRedo ? new History(this.steps, this.at + 1) : this;
  }

  /** The same states, but the next change is a step of its own. */
  settle(): History {
    const steps = this.steps.map((step, index) => (index === this.at ? { ...step, by: "" } : step));
    return new History(steps, this.at);
  }
}
