import type { Broken } from "./Remedy.ts";

/** Most rules or fields that are named; the data has them all. */
export const NAMED = 3;

/** `[rule], [other-rule]`. */
export const brackets = (rules: readonly string[]): string => rules.map((rule) => `[${rule}]`).join(", ");

/** `[rule] no longer holds`, `[rule] fails`. */
export function becomes({ rule, becomes: word }: Broken): string {
  return `[${rule}] ${word === undefined ? "no longer holds" : word === "fails" ? "fails" : `is ${word}`}`;
}

/** The first of what breaks, and how much more there is. */
export function brokenText(broken: readonly Broken[], print: (one: Broken) => string = becomes): string {
  const more = broken.length > NAMED ? `, and ${broken.length - NAMED} more` : "";
  return `${broken.slice(0, NAMED).map(print).join(", ")}${more}`;
}
