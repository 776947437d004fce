import type { Steps } from "../derive/Steps.ts";
import type { StopSignal } from "./refine.ts";
import { BREATH, takeBreath } from "./takeBreath.ts";

/**
 * Does work in pieces, and lets others have their turn in between.
 * @throws the reason of the signal when it was aborted
 */
export async function takeTurns<T>(steps: Steps<T>, signal: StopSignal | undefined): Promise<T> {
  let begun = Date.now();
  for (;;) {
    if (signal?.aborted === true) throw signal.reason;
    const step = steps.next();
    if (step.done === true) return step.value;
    if (Date.now() - begun < BREATH) continue;
    await takeBreath();
    begun = Date.now();
  }
}
