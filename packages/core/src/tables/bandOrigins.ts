import type { Standing } from "@trialfit/rules";
import type { ToleranceOrigin } from "../read/FieldValue.ts";

/** Where a band that the build does not state comes from, and how well founded that is. */
export interface BandOrigin {
  /** Completes "for N values". */
  readonly taken: string;
  /** Absent where nothing was supplied beside the build. */
  readonly standing?: Standing;
}

/**
 * Every origin of a band. The widths of tolerance grades are those of ISO 286-1; which grade a way of making keeps,
 * what an instrument achieves and what a field usually holds are recalled, and any stated figure outranks them.
 */
export const bandOrigins: Readonly<Record<ToleranceOrigin, BandOrigin>> = {
  stated: { taken: "the build states the tolerance" },
  instrument: { taken: "the usual uncertainty of the instrument was taken", standing: "from-memory" },
  making: { taken: "the tolerance that the way of making usually keeps was taken", standing: "from-memory" },
  default: { taken: "the usual tolerance of the field was taken", standing: "from-memory" },
  none: { taken: "no tolerance is known: they were taken as exact" },
};
