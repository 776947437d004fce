import type { Box, Point } from "../scene/Scene.ts";

const round = (value: number) => String(Math.round(value * 100) / 100);

/** Straight lines through points, as an SVG path takes them. */
export function linePath(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
}

/** A closed shape through points. */
export function shapePath(points: readonly Point[]): string {
  return points.length === 0 ? "" : `${linePath(points)}Z`;
}

/**
 * Lines at 45° across a box, so that cut metal is told without colour.
 * @param gap between the lines, across
 */
export function hatchPath({ x, y, width, height }: Box, gap: number): string {
  const lines: string[] = [];
  // Lines run on a grid of the whole picture, so that neighbouring boxes match.
  const first = Math.ceil((x + y) / gap) * gap;
  for (let sum = first; sum < x + width + y + height; sum += gap) {
    const left = Math.max(x, sum - y - height);
    const right = Math.min(x + width, sum - y);
    if (right > left)
      lines.push(`M${round(left)} ${round(sum - left)}L${round(right)} ${round(sum - right)}`);
  }
  return lines.join("");
}
