/** One state of the file, and what made it of the one before. */
interface Step {
  readonly text: string;
  /** What was changed. */
  readonly by: string;
  /** Changes of one run are one step (`Runs`). */
  readonly run: number | undefined;
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

  /** A new state after this one; what had been undone is gone. @param run changes of one run are one step */
  push(text: string, by: string, run?: number): History {
    if (text === this.text) return this;
    const kept = this.steps.slice(0, this.at + 1);
    const joins = run !== undefined && kept.at(-1)?.run === run && kept.length > 1;
    const steps = [...(joins ? kept.slice(0, -1) : kept), { text, by, run }].slice(-MOST_STEPS);
    return new History(steps, steps.length - 1);
  }

  undo(): History {
    return this.canUndo ? new History(this.steps, this.at - 1) : this;
  }

  redo(): History {
    return this.canRedo ? new History(this.steps, this.at + 1) : this;
  }
}
