import type { Comparison } from "../judge/Verdict.ts";
import type { ReportVerdict } from "./Report.ts";

/**
 * Of a rule that holds, what leaves open whether it is meant for this build at all: its requirements are met, but that
 * may not be what is asked of the build. Empty where it surely is meant for it.
 */
export function doubtfulRelevance({
  verdict,
  comparisons,
}: Pick<ReportVerdict, "verdict" | "comparisons">): readonly Comparison[] {
  if (verdict !== "holds") return [];
  const when = comparisons.filter((one) => one.in === "when");
  const unsure = ({ state }: Comparison) => state === "possible" || state === "missing";
  // Where one of several ways surely applies, the others leave nothing open.
  const settled = when.some(({ alternative, state }) => alternative && state === "sure");
  return when.filter((one) => unsure(one) && !(one.alternative && settled));
}
