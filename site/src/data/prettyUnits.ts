import { unitTable } from "trialfit";
import { prettyUnit } from "./prettyUnit.ts";

/** Symbols that are printed otherwise than they are written, the longest first. */
const symbols = unitTable
  .map(({ symbol }) => symbol)
  .filter((symbol) => prettyUnit(symbol) !== symbol)
  .sort((a, b) => b.length - a.length);

const escaped = symbols.map((symbol) => symbol.replace(/[()/]/g, "\\$&"));
/** Only after a number: a word that happens to be spelled like a unit stays. */
const AFTER_NUMBER = new RegExp(String.raw`(?<=\d)( |&nbsp;)(${escaped.join("|")})(?![\w/²³⁴])`, "g");

/** A text for people, its units as people print them: `38 deg` is `38°`, `0.5 um` is `0.5 µm`. */
export const prettyUnits = (text: string): string =>
  text.replace(AFTER_NUMBER, (_, space: string, symbol: string) => {
    const pretty = prettyUnit(symbol);
    return pretty === "°" ? pretty : `${space}${pretty}`;
  });

/** The same in every text of some plain data. */
export function prettyView<T>(view: T): T {
  if (typeof view === "string") return prettyUnits(view) as T & string;
  if (Array.isArray(view)) return view.map(prettyView) as T & unknown[];
  if (typeof view !== "object" || view === null) return view;
  return Object.fromEntries(Object.entries(view).map(([key, value]) => [key, prettyView(value)])) as T;
}

/** Whatever holds what is typed, computed or copied, not read: its text stays as it is. */
const KEPT = "code|pre|script|style|textarea|option|math|kbd|samp";
const PIECES = new RegExp(`<(${KEPT})\\b[^>]*>[\\s\\S]*?</\\1>|<[^>]*>|[^<]+`, "gi");

/** Texts of tags that are read aloud. */
const SPOKEN = /(?<=\saria-label=")[^"]*/g;

/**
 * The same in the texts of some markup, and in what is read aloud of its tags; what is typed, computed or copied stays
 * as it is.
 */
export const prettyMarkup = (html: string): string =>
  html.replace(PIECES, (piece, kept: string | undefined) =>
    kept !== undefined
      ? piece
      : piece.startsWith("<")
        ? piece.replace(SPOKEN, prettyUnits)
        : prettyUnits(piece),
  );
