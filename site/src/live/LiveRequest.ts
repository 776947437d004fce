import type { Entry } from "./Entry.ts";

/** A rule to be judged on a demo build in which some fields say something else. */
export interface LiveRequest {
  /** Counts up, so that an answer that has been overtaken is known. */
  readonly number: number;
  readonly rule: string;
  readonly demo: string;
  /** Path of a field → what stands in its controls, or undefined where it is left out. */
  readonly changes: Readonly<Record<string, Entry | undefined>>;
}
