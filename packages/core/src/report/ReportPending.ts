import type { VerdictWord } from "../judge/Verdict.ts";
import type { ReportQuantity, ReportVerdict } from "./Report.ts";

/** A rule that was not judged yet: what it rests on is still being searched over the tolerances. */
export interface PendingRule
  extends Pick<ReportVerdict, "rule" | "title" | "system" | "parts" | "work" | "weight"> {
  /** Ids of the quantities that it waits for. */
  readonly awaits: readonly string[];
  /**
   * What it would say if every part had its nominal size; absent where that
   * is not known yet, or it is judged place by place. No verdict.
   */
  readonly atNominal?: VerdictWord;
}

/** What is still being worked out. */
export interface ReportPending {
  /** None of them is in `verdicts`, and none of them has passed. */
  readonly rules: readonly PendingRule[];
  /** Rules in `verdicts` that are open, and for which it is not known yet what would settle them. */
  readonly settlements: readonly string[];
  /** Quantities that are not in `quantities` yet, with the nominal value [SI] where there is one. */
  readonly quantities: readonly (Pick<ReportQuantity, "id" | "name" | "symbol" | "unit" | "decimals"> & {
    readonly nominal?: number;
  })[];
}
