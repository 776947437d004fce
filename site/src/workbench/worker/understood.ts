import { fields, syntaxOf } from "trialfit";
import type { Entry, Pieces } from "../protocol.ts";
import { typedWhole } from "./typedWhole.ts";

/** An entry of the form with what was typed whole into the box of a number taken apart, where that can be. */
export function understood(path: string, entry: Entry | undefined): Entry | undefined {
  const spec = fields.get(path)?.spec;
  if (entry === undefined || spec?.kind !== "dimension") return entry;
  const whole = (pieces: Pieces) => typedWhole(pieces, syntaxOf(spec)) ?? pieces;
  if (entry.form === "pieces") return whole(entry);
  if (entry.form !== "readings" || entry.beside?.form !== "pieces") return entry;
  return { ...entry, beside: whole(entry.beside) };
}
