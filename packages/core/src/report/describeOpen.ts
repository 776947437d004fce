import { fieldLabel } from "../read/fieldCatalog.ts";
import { intervalFromSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";
import { formatInterval } from "../units/formatNumber.ts";
import { nameFields } from "./nameFields.ts";
import type { ReportVerdict } from "./Report.ts";
import type { DocumentLine } from "./ReportDocument.ts";

/** Decimals with which a width shows two digits, and the width rounded down to them: what is printed is enough. */
function printWidth(si: number, unit: string): string {
  const width = intervalFromSi(si, unitOf(unit));
  if (!(width > 0)) return formatInterval(0, unit);
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(width)));
  const kept = (Math.floor(width * 10 ** decimals + 1e-9) / 10 ** decimals / width) * si;
  return formatInterval(kept, unit, { decimals });
}

/** What to measure, and how well. */
export function toMeasure({ measure }: NonNullable<ReportVerdict["settlement"]>): string {
  return measure
    .map(
      ({ path, uncertainty, unit }) =>
        `${fieldLabel(path)} [${path}] to ± ${printWidth(uncertainty, unit)} or better`,
    )
    .join("; ");
}

function why({ nominally, unmeasured }: ReportVerdict): string {
  if (unmeasured !== undefined)
    return "holds on paper; by this stage it must be measured, for parts differ from their sheets";
  return `${nominally ? "holds" : "fails"} at the nominal values; the tolerances reach across the limit`;
}

/** Why a verdict is open, and what would settle it. */
export function describeOpen(verdict: ReportVerdict): readonly DocumentLine[] {
  const { settlement, settleBy } = verdict;
  const lines: DocumentLine[] = [{ label: "open", text: why(verdict) }];
  if (settlement !== undefined) {
    const those = settlement.measure.length === 1 ? "this comes" : "these come";
    const then = settlement.becomes === "not-applicable" ? "does not apply" : settlement.becomes;
    const provided = {
      "as-expected": `then it surely ${then}, if ${those} out as expected`,
      "as-expected-finely": `then it surely ${then}, if ${those} out as expected; hardly anyone measures so finely: the expected value lies next to the limit, and what comes out away from it settles it sooner`,
      "clear-of-limit":
        "the expected value lies on the limit, so only what comes out clear of it, by more than that, settles it",
    };
    const text = `${toMeasure(settlement)}: ${provided[settlement.provided]}`;
    return [...lines, { label: "measure", text }];
  }
  if (settleBy.length === 0) return lines;
  const text = `${nameFields(settleBy.slice(0, 4))}: what else would settle it is not known`;
  return [...lines, { label: "measure", text }];
}
