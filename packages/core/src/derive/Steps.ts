/**
 * Work that stops now and then, so that whoever does it can let others have a turn or leave it where it is. What it
 * comes to is its last value; the stops carry nothing.
 */
export type Steps<T> = Generator<void, T, void>;

/** Does the whole work at once. */
export function finish<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
