import type { ArgsDef } from "citty";
import { checkDrawing, type Drawing, MOST_DRAWS } from "trialfit";
import { UsageError } from "./UsageError.ts";

/** Options of every command that can draw engines. */
export const drawArgs = {
  draw: {
    type: "string",
    valueHint: "COUNT",
    description: `Draw so many engines within the tolerances (at most ${MOST_DRAWS}) and say how many hold; 1000 take up to a minute with every rule; no verdict changes`,
  },
  seed: {
    type: "string",
    valueHint: "N",
    description: "Whole number that fixes which engines are drawn; 1 unless given",
  },
} as const satisfies ArgsDef;

function wholeNumber(text: string, option: string): number {
  if (!/^\d{1,10}$/.test(text)) throw new UsageError(`--${option} takes a whole number, not "${text}"`);
  return Number(text);
}

/**
 * How many engines to draw, from the options.
 * @returns undefined where none are wanted
 * @throws UsageError when a number cannot be used, or a seed stands without a count
 */
export function readDrawing(draw: string | undefined, seed: string | undefined): Drawing | undefined {
  if (draw === undefined) {
    if (seed !== undefined) throw new UsageError("--seed says which engines are drawn: add --draw COUNT");
    return undefined;
  }
  const drawing = { draws: wholeNumber(draw, "draw"), seed: wholeNumber(seed ?? "1", "seed") };
  try {
    checkDrawing(drawing);
  } catch (error) {
    throw error instanceof RangeError ? new UsageError(error.message) : error;
  }
  return drawing;
}
