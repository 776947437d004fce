import type { BandBar } from "./ReportDocument.ts";

const WIDTH = 36;

/** A band against its limit in one line of characters: `─` scale, `█` band, `◆` nominal, `┃` limit. */
export function drawBar(bar: BandBar): string {
  const ends = [bar.low, bar.high, bar.nominal, bar.limitLow, bar.limitHigh];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const pad = (most - least) * 0.08 || Math.max(Math.abs(most) * 0.05, 1e-9);
  const column = (value: number) =>
    Math.round(((value - least + pad) / (most - least + 2 * pad)) * (WIDTH - 1));
  const cells: string[] = Array.from({ length: WIDTH }, (_, index) =>
    index >= column(bar.low) && index <= column(bar.high) ? "█" : "─",
  );
  cells[column(bar.limitLow)] = "┃";
  cells[column(bar.limitHigh)] = "┃";
  cells[column(bar.nominal)] = column(bar.nominal) === column(bar.limitLow) ? "◈" : "◆";
  return `${cells.join("")}  ◆ ${bar.print(bar.nominal)}  ┃ ${bar.limitText}`;
}
