import pc from "picocolors";
import { type ReportDocument, renderMarkdown, renderText, type TextStyle, type Tone } from "trialfit";

export const formats = ["text", "markdown", "json"] as const;
export type Format = (typeof formats)[number];

const PAINTS: Readonly<Record<Tone | "heading", (text: string) => string>> = {
  plain: (text) => text,
  faint: pc.dim,
  good: pc.green,
  bad: pc.red,
  doubt: pc.yellow,
  heading: pc.bold,
};

/** Text settings for this terminal: its width, and colour unless it is off or not a terminal. */
function terminalStyle(colour: boolean): TextStyle {
  const columns = process.stdout.columns ?? 88;
  const width = Math.min(Math.max(columns, 60), 110);
  return colour && pc.isColorSupported ? { width, paint: (text, tone) => PAINTS[tone](text) } : { width };
}

/** A document in the wanted format; JSON is the plain data that it was made from. */
export function render(document: ReportDocument, format: Format, colour: boolean, data: unknown): string {
  switch (format) {
    case "json":
      return `${JSON.stringify(data, null, 2)}\n`;
    case "markdown":
      return renderMarkdown(document);
    case "text":
      return renderText(document, terminalStyle(colour));
  }
}
