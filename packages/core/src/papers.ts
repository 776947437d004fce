/** The papers of the job, written from a build, and the readings that come back on them. */

export { isReleased } from "./papers/gates.ts";
export { type Limits, limitsOf } from "./papers/limitsOf.ts";
export { makePaperSource, onTerms, type PaperTerms, type SourceOptions } from "./papers/makePaperSource.ts";
export {
  type MeasuringPlan,
  measuringPlan,
  type PlannedDimension,
  type PlannedPlace,
} from "./papers/measuringPlan.ts";
export type {
  BlankPiece,
  Cell,
  Gate,
  GatedLine,
  NumberPiece,
  Override,
  Paper,
  PaperGrid,
  PaperHead,
  PaperSection,
  PaperSet,
  PaperStep,
  PaperSteps,
  PaperTable,
  Piece,
  TickPiece,
} from "./papers/Paper.ts";
export type { PaperSource } from "./papers/PaperSource.ts";
export { paperIds } from "./papers/paperKinds.ts";
export { type PaperPurpose, paperPurposes } from "./papers/paperPurposes.ts";
export { type PaperSize, paperSizes } from "./papers/print/paperStyle.ts";
export { type UnitChoice, unitChoices } from "./papers/print/paperUnits.ts";
export { renderPaperHtml } from "./papers/print/renderPaperHtml.ts";
export { renderPaperMarkdown } from "./papers/print/renderPaperMarkdown.ts";
export { type SheetRow, sheetColumns, sheetText } from "./papers/print/sheetRows.ts";
export { type EngineRecord, RECORD_FORMAT, type ReadRecord } from "./papers/record/EngineRecord.ts";
export { isRecord, MAX_RECORD_LENGTH, readRecord } from "./papers/record/readRecord.ts";
export { writeRecord } from "./papers/record/writeRecord.ts";
export type { FilledRow } from "./papers/takeIn/readSheet.ts";
export { takeReadings } from "./papers/takeIn/takeReadings.ts";
export { type TakenReading, type TakenSheet, takeRows } from "./papers/takeIn/takeRows.ts";
export {
  PaperError,
  type PaperOptions,
  type PaperProgress,
  type WritingOptions,
  type WrittenPapers,
  writeFrom,
  writePapers,
} from "./papers/writePapers.ts";
