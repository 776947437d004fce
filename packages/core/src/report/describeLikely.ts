import { doubtWords } from "../derive/statistics/rootSumSquare.ts";
import type { HoldsIn } from "../judge/sampleVerdicts.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { formatInterval } from "../units/formatNumber.ts";
import { printRange } from "./printValue.ts";
import type { Report, ReportQuantity, ReportVerdict } from "./Report.ts";
import type { DocumentLine } from "./ReportDocument.ts";

/** A share in percent; what is not all or nothing never reads as if it were. */
export function printShare(share: number): string {
  const percent = Math.round(share * 100);
  if (share < 1 && percent === 100) return "more than 99 %";
  if (share > 0 && percent === 0) return "less than 1 %";
  return `${percent} %`;
}

function holdsText({ share, engines }: HoldsIn, draws: number): string {
  const which = engines === draws ? "" : " that the rule applies to";
  return `of ${engines} engines drawn within the tolerances${which}, ${printShare(share)} hold`;
}

/** The band by root sum square in words, with what makes it doubtful. */
export function rootSumSquareText({ rootSumSquare, unit, decimals }: ReportQuantity): string | undefined {
  if (rootSumSquare === undefined || rootSumSquare.low === rootSumSquare.high) return undefined;
  const doubts = rootSumSquare.doubts.map((doubt) => `; not to be trusted here: ${doubtWords[doubt]}`);
  return `${printRange(rootSumSquare, unit, decimals)} by root sum square${doubts.join("")}`;
}

/** How a quantity scatters over the drawn engines, in words. */
export function sampledText({ sampled, unit, decimals }: ReportQuantity): string | undefined {
  if (sampled === undefined || sampled.least === sampled.greatest) return undefined;
  const scatter = formatInterval(sampled.deviation, unit, { digits: 2 });
  return `${printRange(sampled, unit, decimals)} in 95 of 100 drawn engines, ${printRange({ low: sampled.least, high: sampled.greatest }, unit, decimals)} in all ${sampled.engines}; standard deviation ${scatter}`;
}

/** The inputs that spread a quantity most: `Gasket thickness is 61 % of it (44 % of the worst case)`. */
export function spreadText({ spreadBy = [] }: ReportQuantity): string | undefined {
  const shown = spreadBy.filter(({ share, varianceShare = 0 }) => Math.max(share, varianceShare) >= 0.005);
  if (shown.length === 0) return undefined;
  return shown
    .map(({ path, share, varianceShare }) =>
      varianceShare === undefined
        ? `${fieldLabel(path)} is ${printShare(share)} of the worst case`
        : `${fieldLabel(path)} is ${printShare(varianceShare)} of it (${printShare(share)} of the worst case)`,
    )
    .join("; ");
}

/**
 * How likely an open verdict is to hold, and where the compared values mostly lie. What is judged at a place of its own
 * has other values than the engine as a whole, for which the report carries them.
 */
export function likelyLines(
  { verdict, holdsIn, unmeasured, comparisons, at }: ReportVerdict,
  { statistics, quantities }: Report,
): readonly DocumentLine[] {
  if (statistics === undefined || holdsIn === undefined || verdict !== "open" || unmeasured !== undefined)
    return [];
  const open = new Set(comparisons.filter(({ state }) => state === "possible").map(({ fact }) => fact));
  const values = at === undefined ? quantities.filter(({ id }) => open.has(id)) : [];
  return [
    { label: "drawn", text: holdsText(holdsIn, statistics.draws) },
    ...values.flatMap((quantity): readonly DocumentLine[] => {
      const [drawn, likely] = [sampledText(quantity), rootSumSquareText(quantity)];
      return [
        ...(drawn === undefined ? [] : [{ label: "mostly", text: `${quantity.name} ${drawn}` }]),
        ...(likely === undefined ? [] : [{ label: "likely", text: `${quantity.name} ${likely}` }]),
      ];
    }),
  ];
}
