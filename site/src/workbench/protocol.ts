import type { PositionKind, Provenance, Stage, Tone, VerdictWord } from "trialfit";
import type { MeasuringPlan, PaperPurpose, SheetRow, UnitChoice } from "trialfit/papers";
import type { BandPicture } from "../data/bandPicture.ts";
import type { Both, PairView } from "./pairProtocol.ts";

/** What a form says of one dimension beside its size. */
export interface About {
  readonly provenance?: Provenance | undefined;
  readonly instrument?: string | undefined;
  /** With its unit. */
  readonly uncertainty?: string | undefined;
  /** A way of making, by its name. */
  readonly made?: string | undefined;
  readonly note?: string | undefined;
}

/** The size of an entry, in pieces. */
export interface Pieces {
  readonly form: "pieces";
  readonly number: string;
  readonly unit: string;
  readonly tolerance: string;
  readonly word: string;
  readonly about: About;
}

/** A word, a count, a text, or a dimension whose writing has no pieces. */
export interface Text {
  readonly form: "text";
  readonly text: string;
  readonly about: About;
}

/** One reading, and where it was taken; height and direction may be left out. */
export interface Reading {
  /** Number of the cylinder, crankpin or main bearing. */
  readonly at: string;
  readonly height: string;
  readonly direction: string;
  /** As it was written; a number alone is in the unit of the readings. */
  readonly reading: string;
}

/** Readings of a dimension that there are several of. */
export interface Readings {
  readonly form: "readings";
  readonly unit: string;
  readonly rows: readonly Reading[];
  /** The size of those that were not measured. */
  readonly beside: Pieces | Text | undefined;
  readonly about: About;
}

/** A size that is to be found, within bounds and in steps; all may be left out. A number alone is in this unit. */
export interface Wanted {
  readonly form: "wanted";
  readonly unit: string;
  readonly from: string;
  readonly to: string;
  readonly step: string;
}

/** An entry of the build file as a form shows it. */
export type Entry =
  | Pieces
  | Text
  | Readings
  | Wanted
  /** What a person saw, by whom, when and how. */
  | {
      readonly form: "seen";
      readonly seen: string;
      readonly by: string;
      readonly on: string;
      readonly how: string;
    }
  | { readonly form: "rows"; readonly rows: readonly Readonly<Record<string, string>>[] }
  /** Anything richer: a row with something unknown, a writing that the form does not know. */
  | { readonly form: "file"; readonly file: string };

/** What is wrong with the build file, where, and what was expected. */
export interface Trouble {
  /** Path of the entry, or empty for the file as a whole. */
  readonly path: string;
  readonly line?: number | undefined;
  readonly text: string;
}

export interface LineView {
  readonly label?: string;
  readonly text: string;
  readonly tone: Tone;
  readonly band?: BandPicture;
}

/** One finding, or another item of a report. */
export interface ItemView {
  readonly title: string;
  readonly id?: string;
  readonly tone: Tone;
  readonly word?: VerdictWord | "pending";
  readonly weight?: string;
  readonly work?: string;
  readonly parts?: readonly string[];
  /** The comparison that decides the verdict, in words. */
  readonly glance?: string;
  /** Path of the entry in which a person says what was seen, where a person must look. */
  readonly confirmation?: string;
  /** Entries that would settle it, as paths. */
  readonly needs?: readonly string[];
  /** Quantities whose numbers decide it, by id. */
  readonly numbers?: readonly string[];
  /** Which inputs spread the compared value, as markup of our own components. */
  readonly spread?: string;
  readonly lines: readonly LineView[];
}

export interface SectionView {
  readonly heading: string;
  readonly intro?: string;
  readonly items: readonly ItemView[];
}

export interface DocumentView {
  readonly title: string;
  readonly lead: readonly LineView[];
  readonly sections: readonly SectionView[];
  readonly closing: readonly string[];
}

/** What rules can say, as it is counted; those that wait for a person apart. */
export type CountWord = "pending" | "fails" | "open" | "unknown" | "toConfirm" | "holds" | "notApplicable";

/** A report as it is shown. */
export interface ReportView extends DocumentView {
  readonly counts: Readonly<Record<CountWord, number>>;
  /** Entries that rules ask for and the build has not, the most wanted first. */
  readonly wanted: readonly { readonly path: string; readonly rules: number }[];
}

/** An item, or the place of one that is the same as in the message before: counted through all its sections. */
export type PackedItem = ItemView | number;

/** A report as it is sent: what did not change since the message before is not sent again. */
export interface PackedReport extends Omit<ReportView, "sections"> {
  readonly sections: readonly (Omit<SectionView, "items"> & { readonly items: readonly PackedItem[] })[];
}

/** What is judged: the rules of a stage, with the limits of a set. */
export interface JudgeOptions {
  readonly stage?: Stage | undefined;
  readonly set?: string | undefined;
}

/** How many cylinders, crankpins and main bearings the build has, where it tells. */
export type Places = Readonly<Partial<Record<PositionKind, number>>>;

/** Every message carries the state of the build it is about, counted up by the page. */
export type ToWorker = { readonly revision: number } & (
  | { readonly kind: "open"; readonly text: string; readonly file: string }
  | { readonly kind: "write"; readonly path: string; readonly entry: Entry | undefined }
  /** Write sizes at several entries, as one change. */
  | { readonly kind: "put"; readonly sizes: readonly { readonly path: string; readonly text: string }[] }
  | { readonly kind: "convert"; readonly path: string; readonly unit: string }
  | { readonly kind: "judge"; readonly options: JudgeOptions }
  /** The file of the build that stands beside this one from now on; none to stop comparing. */
  | { readonly kind: "hold"; readonly text: string | undefined }
  /** From now on tell what is to be measured, in these units. */
  | { readonly kind: "measure"; readonly units: UnitChoice }
  /** Take one filled row of the measurement sheet into the build. */
  | { readonly kind: "take"; readonly row: SheetRow }
  /** Take a filled measurement sheet into the build. */
  | { readonly kind: "sheet"; readonly text: string; readonly file: string }
);

/** What came of readings that were to be taken into the build. */
export interface Taking {
  readonly taken: readonly { readonly label: string; readonly text: string; readonly instead?: string }[];
  /** Readings that stand in the build already. */
  readonly known: number;
  /** Why others were not taken. */
  readonly refused: readonly string[];
}

export type FromWorker = { readonly revision: number } & (
  | {
      readonly kind: "text";
      readonly text: string;
      readonly name: string;
      readonly entries: Readonly<Record<string, Entry>>;
      readonly places: Places;
      readonly troubles: readonly Trouble[];
    }
  | {
      readonly kind: "report";
      readonly view: PackedReport;
      readonly done: boolean;
      /** Time from the change to the first report, and to the one with every verdict, or this one before it [ms]. */
      readonly first: number;
      readonly took: number;
    }
  /** No report: the file as a whole cannot be read. */
  | { readonly kind: "unread" }
  | { readonly kind: "pair"; readonly view: PairView }
  | { readonly kind: "plan"; readonly plan: MeasuringPlan }
  | { readonly kind: "taken"; readonly of: SheetRow | string; readonly taking: Taking }
  | { readonly kind: "failed"; readonly message: string }
);

/** A picture drawn in the worker: markup of our own components, with every text from a file escaped by them. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly html: string;
}

/** To the worker that draws; `sequence` is counted up by the page. */
export type ToViewer = { readonly sequence: number } & (
  | { readonly kind: "look"; readonly text: string; readonly file: string; readonly view: View }
  | { readonly kind: "turn"; readonly view: View }
  /** Draw two builds at the same angle and to the same scale. */
  | { readonly kind: "pair"; readonly texts: Both<string>; readonly angle: number }
);

/** What is looked at. */
export interface View {
  /** Crank angle after firing top dead centre [rad]. */
  readonly angle: number;
  /** Id of a chart. */
  readonly chart: string;
  /** Id of the trace whose nearest place is marked; empty for the nearest of all. */
  readonly mark: string;
}

export type FromViewer = { readonly sequence: number } & (
  | {
      readonly kind: "drawn";
      readonly still: readonly Drawing[];
      readonly charts: readonly Choice[];
      readonly marks: readonly Choice[];
    }
  /** The values of a chart as a table; empty where there is nothing to draw. */
  | { readonly kind: "tabulated"; readonly title: string; readonly table: string }
  | { readonly kind: "turned"; readonly mechanism: string; readonly chart: string }
  | { readonly kind: "paired"; readonly mechanisms: Both<string> }
  | { readonly kind: "blank" }
);

/** A field of the form, from its declaration. */
export interface FormField {
  readonly path: string;
  readonly label: string;
  readonly help: string;
  readonly kind: "dimension" | "choice" | "count" | "text" | "table";
  /** Units in which it may be given, the usual one first. */
  readonly units?: readonly string[];
  readonly words?: readonly string[];
  readonly range?: readonly string[];
  /** Taken when none is given. */
  readonly tolerance?: string;
  readonly per?: PositionKind;
  readonly options?: Readonly<Record<string, string>>;
  readonly columns?: readonly { readonly name: string; readonly label: string; readonly optional: boolean }[];
  /** A row as it is written. */
  readonly row?: string;
  /** What is taken when it is left out, in words. */
  readonly leftOut?: readonly string[];
  /** How many rules rest on it. */
  readonly rules: number;
}

export interface FormPart {
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly fields: readonly FormField[];
}

/** What the form is made of. */
export interface FormData {
  readonly parts: readonly FormPart[];
  readonly instruments: readonly string[];
  /** Ways of making, in words. */
  readonly ways: readonly Choice[];
  /** Quantities that can be aimed at, with their units. */
  readonly quantities: readonly (Choice & { readonly unit: string })[];
  readonly stages: readonly Choice[];
  readonly sets: readonly Choice[];
  /** Parts by the names that rules give them. */
  readonly ruleParts: readonly Choice[];
  /** The papers of the job, by what each is for. */
  readonly papers: readonly PaperPurpose[];
}

/** Something to choose, with what it is. */
export interface Choice {
  readonly id: string;
  readonly label: string;
}

/** An invented build to begin with. */
export interface DemoText {
  readonly id: string;
  readonly name: string;
  readonly story: string;
  readonly text: string;
}
