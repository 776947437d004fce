import type { Report } from "../../report/Report.ts";
import type { PaperHead } from "../Paper.ts";

/** The record of an engine as a file: what was built, as it was written, and what was found of it. */
export interface EngineRecord {
  readonly format: "trialfit-record";
  readonly formatVersion: typeof RECORD_FORMAT;
  readonly head: PaperHead;
  /** The build file, whole, with its comments. */
  readonly build: string;
  readonly report: Report;
}

/** Version of the record's format that is written. Version 1 was the report alone (`trialfit check --format json`). */
export const RECORD_FORMAT = 2;

/** A state of a build that was read from a record, with what had to be done to read it. */
export interface ReadRecord {
  /** In plain data or text in the shape of a build file. */
  readonly build: string;
  /** What is not as it was, or is no longer known, in words; empty for a record of today's format. */
  readonly migrated: readonly string[];
}
