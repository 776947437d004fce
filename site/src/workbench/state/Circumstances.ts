import type { UnitChoice } from "trialfit/papers";

/** With what sizes of one unit are measured. */
export interface Tool {
  readonly instrument: string;
  /** A number in that unit. */
  readonly uncertainty: string;
}

/** What is given once and goes with every reading after it. */
export interface Circumstances {
  readonly by: string;
  /** The day, `2026-03-14`. */
  readonly on: string;
  /** Of the part; a number alone is in degrees Celsius. */
  readonly temperature: string;
  readonly joint: string;
  /** By the unit that is read. */
  readonly tools: Readonly<Record<string, Tool>>;
  readonly units: UnitChoice;
}

const KEY = "trialfit.measuring";
const today = () => new Date().toISOString().slice(0, 10);
const none: Circumstances = { by: "", on: "", temperature: "", joint: "", tools: {}, units: "written" };

/** What was given before, on this machine; the day is always today's. */
export function keptCircumstances(): Circumstances {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? "{}") as Partial<Circumstances>;
    return { ...none, ...kept, on: today() };
  } catch {
    return { ...none, on: today() };
  }
}

/** Keeps it for the next visit. Where the browser keeps nothing, so be it. */
export function keepCircumstances(circumstances: Circumstances): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(circumstances));
  } catch {
    // Storage may be switched off or full; it is asked for again at the next visit.
  }
}
