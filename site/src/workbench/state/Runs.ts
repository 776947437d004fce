/** Longest pause between two changes of one entry that are one step of undoing [ms]. */
const PAUSE = 1000;

/** Tells which changes belong together: those of one entry in a row, without a pause and without leaving it. */
export class Runs {
  private run = 0;
  private by = "";
  private last = Number.NEGATIVE_INFINITY;

  /**
   * Number of the run that a change belongs to.
   * @param by what is changed; empty for what stands by itself
   * @param now [ms]
   */
  next(by: string, now: number): number {
    if (by === "" || by !== this.by || now - this.last > PAUSE) this.run += 1;
    this.by = by;
    this.last = now;
    return this.run;
  }

  /** What comes next is a run of its own: the entry was left. */
  end(): void {
    this.by = "";
  }
}
