import { drawBar } from "./drawBar.ts";
import type { DocumentItem, DocumentLine, ReportDocument, Tone } from "./ReportDocument.ts";

export interface TextStyle {
  /** Columns to fill; 88 unless given. */
  readonly width?: number;
  /** Colours a piece of text; leaves it as it is unless given. */
  readonly paint?: (text: string, tone: Tone | "heading") => string;
}

const LABEL_WIDTH = 10;

function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** A document as plain text for a terminal or a log. */
export function renderText(document: ReportDocument, style: TextStyle = {}): string {
  const width = Math.max(40, style.width ?? 88);
  const paint = style.paint ?? ((text: string) => text);
  const out: string[] = [];
  const line = ({ label, text, tone = "plain", bar }: DocumentLine) => {
    const margin = " ".repeat(4 + LABEL_WIDTH);
    wrap(text, width - margin.length).forEach((row, index) => {
      const head = index === 0 && label !== undefined ? `    ${`${label} `.padEnd(LABEL_WIDTH)}` : margin;
      out.push(paint(`${head}${row}`, tone));
    });
    if (bar !== undefined) out.push(`${margin}${drawBar(bar)}`);
  };
  const item = ({ title, id, tone, lines }: DocumentItem) => {
    const suffix = id === undefined ? "" : `  [${id}]`;
    wrap(`${title}${suffix}`, width - 4).forEach((row, index) => {
      out.push(paint(index === 0 ? `  • ${row}` : `    ${row}`, tone));
    });
    lines.forEach(line);
  };
  out.push(paint(document.title, "heading"));
  for (const { text, tone = "plain" } of document.lead)
    out.push(...wrap(text, width).map((row) => paint(row, tone)));
  for (const section of document.sections) {
    out.push("", paint(section.heading, "heading"));
    if (section.intro !== undefined) out.push(...wrap(section.intro, width - 2).map((row) => `  ${row}`));
    section.items.forEach(item);
  }
  for (const text of document.closing) out.push("", ...wrap(text, width).map((row) => paint(row, "faint")));
  return `${out.join("\n")}\n`;
}
