import { type Stage, stages } from "../read/FieldSpec.ts";
import { fields } from "../read/fieldCatalog.ts";
import type { Judged } from "./Judged.ts";

/** Part of the spread below which a dimension does not carry a verdict. */
const CARRIES = 0.02;

/** Fields that a compared value rests on and that carry its spread, or all of them where it has none. */
export function carriersOf({ derivations }: Pick<Judged, "derivations">, fact: string): readonly string[] {
  const derivation = derivations.get(fact);
  if (derivation === undefined) return [fact];
  if (derivation.state !== "value") return [];
  return derivation.spread.filter(({ share }) => share >= CARRIES).map(({ path }) => path);
}

/**
 * Dimensions that carry a verdict and, at this stage of the build, should have been measured but were not.
 * @param stage the stage at which the build stands
 */
export function unmeasured(judged: Judged, stage: Stage): readonly string[] {
  const due = (path: string) => {
    const spec = fields.get(path)?.spec;
    const value = judged.values.get(path);
    return (
      spec?.kind === "dimension" &&
      spec.measureBy !== undefined &&
      stages.indexOf(spec.measureBy) <= stages.indexOf(stage) &&
      value?.kind === "dimension" &&
      value.provenance !== "measured"
    );
  };
  const facts = judged.verdict.comparisons.filter((one) => one.in === "requires").map(({ fact }) => fact);
  return [...new Set(facts.flatMap((fact) => carriersOf(judged, fact)))].filter(due).sort();
}

/**
 * At a stage by which parts are to be measured, a rule that holds on published sizes is still open: what is on the
 * bench may differ from the sheet. A failure stands: it needs no measuring to be one.
 */
export function asOfStage(judged: Judged, stage: Stage | undefined): Judged {
  const paths = stage === undefined ? [] : unmeasured(judged, stage);
  if (paths.length === 0 || judged.verdict.verdict !== "holds") return judged;
  return { ...judged, verdict: { ...judged.verdict, verdict: "open", unmeasured: paths } };
}
