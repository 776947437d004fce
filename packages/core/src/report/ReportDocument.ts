import type { Comparison } from "../judge/Verdict.ts";

/** A report or an explanation as text in sections, before it is laid out for a terminal, a page or a file. */
export interface ReportDocument {
  readonly title: string;
  /** Short lines under the title. */
  readonly lead: readonly DocumentLine[];
  readonly sections: readonly DocumentSection[];
  readonly closing: readonly string[];
}

/** How a piece of text is meant, for those who colour it; never the only sign of its meaning. */
export type Tone = "plain" | "good" | "bad" | "doubt" | "faint";

export interface DocumentLine {
  readonly label?: string;
  readonly text: string;
  readonly tone?: Tone;
  /** A band against a limit, to be drawn. */
  readonly bar?: BandBar;
  /** What the line tells of, for those who draw it themselves. */
  readonly comparison?: Comparison;
}

/** Numbers in one unit, with how to print them. */
export interface BandBar {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  readonly limitLow: number;
  readonly limitHigh: number;
  readonly limitText: string;
  readonly print: (value: number) => string;
}

export interface DocumentItem {
  readonly title: string;
  /** The id of the rule or quantity that it is about. */
  readonly id?: string;
  readonly tone: Tone;
  readonly lines: readonly DocumentLine[];
}

export interface DocumentSection {
  readonly heading: string;
  readonly intro?: string;
  readonly items: readonly DocumentItem[];
}
