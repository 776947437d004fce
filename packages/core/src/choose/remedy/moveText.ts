import { formatInterval } from "../../units/formatNumber.ts";
import type { SizeChange } from "./Remedy.ts";

/** `0.15 mm less than now`; what was measured place by place moves at each. */
export function moveText({ from, to, unit, text }: SizeChange): string {
  const by = `${formatInterval(Math.abs(to - from), unit)} ${to < from ? "less" : "more"}`;
  return `${by} ${text === undefined ? "at each place where it was measured" : "than now"}`;
}

/** `32.85 mm ± 0.02, 0.15 mm less than now`. */
export function sizeText(change: SizeChange): string {
  return change.text === undefined ? moveText(change) : `${change.text}, ${moveText(change)}`;
}
