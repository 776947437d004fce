import type { VerdictWord } from "trialfit";
import type { Limits } from "trialfit/papers";
import type { ItemView, ReportView } from "../../protocol.ts";
import { decimal } from "./filledRow.ts";

/** How the rules stand that rest on something, the gravest first. */
export type RuleStanding = readonly {
  readonly word: VerdictWord | "pending";
  readonly items: readonly ItemView[];
}[];

const ORDER = ["fails", "open", "pending", "unknown", "holds"] as const;

/** Verdicts of a report by the ids of their rules. */
export function verdictsOf(report: ReportView | undefined): ReadonlyMap<string, ItemView> {
  const items = report?.sections.flatMap((section) => section.items) ?? [];
  return new Map(items.flatMap((item) => (item.id === undefined ? [] : [[item.id, item]])));
}

/** How some rules stand. Those that do not apply say nothing. */
export function standingOf(rules: readonly string[], verdicts: ReadonlyMap<string, ItemView>): RuleStanding {
  const own = rules.flatMap((rule) => verdicts.get(rule) ?? []);
  return ORDER.map((word) => ({ word, items: own.filter((item) => item.word === word) })).filter(
    ({ items }) => items.length > 0,
  );
}

export interface Place {
  readonly tone: "good" | "bad";
  readonly text: string;
}

/** A number with a word after it, as limits are written. */
const NUMBER = /^[-+]?\d+(\.\d+)?$/;

/** Where a reading lies between its limits; undefined where that cannot be told by the numbers alone. */
export function placeBetween(reading: string, limits: Limits | undefined): Place | undefined {
  if (limits === undefined) return undefined;
  const { lowest, highest, lowestBy, highestBy } = limits;
  const texts = [decimal(reading), lowest, highest].filter((text) => text !== "");
  if (texts.length < 2 || !NUMBER.test(decimal(reading)) || !texts.every((text) => NUMBER.test(text)))
    return undefined;
  const size = Number(decimal(reading));
  if (lowest !== "" && size < Number(lowest))
    return {
      tone: "bad",
      text: `under the lowest, ${lowest}${lowestBy === undefined ? "" : ` (${lowestBy})`}`,
    };
  if (highest !== "" && size > Number(highest))
    return {
      tone: "bad",
      text: `over the highest, ${highest}${highestBy === undefined ? "" : ` (${highestBy})`}`,
    };
  return { tone: "good", text: "within the limits" };
}
