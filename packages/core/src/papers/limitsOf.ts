import type { StopSignal } from "../live/refine.ts";
import { takeTurns } from "../live/takeTurns.ts";
import type { PaperSource } from "./PaperSource.ts";
import { sheetRows } from "./print/sheetRows.ts";

/** Between which sizes a dimension may come out, as its row of the measurement sheet says it. */
export interface Limits {
  /** Rules that hold and rest on it: only those can end it, so with none nothing is known of its limits. */
  readonly rules: number;
  /** Empty where no rule ends it near by. */
  readonly lowest: string;
  readonly highest: string;
  /** Titles of the rules that end it. */
  readonly lowestBy?: string;
  readonly highestBy?: string;
}

/**
 * The limits of one dimension of the measurement sheet.
 * @returns undefined where the sheet does not ask for it
 * @throws the reason of the signal when it was aborted
 */
export async function limitsOf(
  source: PaperSource,
  path: string,
  signal?: StopSignal,
): Promise<Limits | undefined> {
  const room = await takeTurns(source.roomInSteps(path), signal);
  const only = (one: string) => (one === path ? room : { rules: 0 });
  const row = sheetRows({ ...source, room: only }).find(({ entry }) => entry === path);
  if (row === undefined) return undefined;
  const titleOf = (rule: string) => source.rules.get(rule)?.file.title ?? rule;
  const { low, high } = room;
  return {
    rules: room.rules,
    lowest: row.lowest,
    highest: row.highest,
    ...(low === undefined ? {} : { lowestBy: titleOf(low.rule) }),
    ...(high === undefined ? {} : { highestBy: titleOf(high.rule) }),
  };
}
