/** The papers of the job, written from a build, and the readings that come back on them. */
export type {
  BlankPiece,
  Cell,
  Gate,
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
export { paperIds } from "./papers/paperKinds.ts";
export { type PaperSize, paperSizes } from "./papers/print/paperStyle.ts";
export { type UnitChoice, unitChoices } from "./papers/print/paperUnits.ts";
export { renderPaperHtml } from "./papers/print/renderPaperHtml.ts";
export { renderPaperMarkdown } from "./papers/print/renderPaperMarkdown.ts";
export { type SheetRow, sheetColumns, sheetText } from "./papers/print/sheetRows.ts";
export { type EngineRecord, RECORD_FORMAT, type ReadRecord } from "./papers/record/EngineRecord.ts";
export { isRecord, MAX_RECORD_LENGTH, readRecord } from "./papers/record/readRecord.ts";
export { writeRecord } from "./papers/record/writeRecord.ts";
export { type TakenReading, type TakenSheet, takeReadings } from "./papers/takeIn/takeReadings.ts";
export { PaperError, type PaperOptions, type WrittenPapers, writePapers } from "./papers/writePapers.ts";
