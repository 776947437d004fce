import type { WrittenPapers } from "../writePapers.ts";
import { type EngineRecord, RECORD_FORMAT } from "./EngineRecord.ts";

/**
 * The record of an engine as a file, to be kept beside the paper.
 * @param build the build file, whole
 */
export function writeRecord({ head, report }: WrittenPapers, build: string): string {
  const record: EngineRecord = {
    format: "trialfit-record",
    formatVersion: RECORD_FORMAT,
    head,
    build,
    report,
  };
  return `${JSON.stringify(record, null, 2)}\n`;
}
