import { finite, requireAll } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "./ThermalPart.ts";

/**
 * A gap when hot: the gap cold, and what the parts that span it grow by, less what the parts that fill it grow by.
 * @param input.gap cold, measured or from sizes [m], - for interference
 * @param input.around parts whose growth opens the gap; a part that stands in it twice is named twice
 * @param input.within parts whose growth closes the gap
 * @returns gap hot [m], - for interference
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry, one uniform temperature per part.
 */
export function gapWhenHot(input: {
  gap: number;
  around: readonly ThermalPart[];
  within: readonly ThermalPart[];
}): number {
  const { gap, around, within } = input;
  requireAll(finite, { gap });
  const growth = (parts: readonly ThermalPart[]) => parts.reduce((sum, part) => sum + thermalGrowth(part), 0);
  return gap + growth(around) - growth(within);
}
