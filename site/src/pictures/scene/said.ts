import { type Nominals, quantities } from "trialfit";
import { type KnownBands, printed } from "./printed.ts";

/** A quantity with its name: `Pin end float: 0.30 mm (0.24 to 0.36 mm)`; nothing when the build does not give it. */
export function said(nominals: Nominals, id: string, known?: KnownBands): readonly string[] {
  const text = printed(nominals, id, known);
  return text === undefined ? [] : [`${quantities.get(id)!.name}: ${text}`];
}
