import { leavesOf } from "../judge/CompiledRule.ts";
import { type Stage, stages } from "../read/FieldSpec.ts";
import { fields } from "../read/fieldCatalog.ts";
import type { PaperSource } from "./PaperSource.ts";
import { partOrder } from "./partsOf.ts";

/** Kinds of work that follow from something that was measured, not from a choice. */
const handled: ReadonlySet<string> = new Set(["machine", "measure", "assemble"]);

const upTo = (stage: Stage) => stages.slice(0, stages.indexOf(stage) + 1);

/** Units in which something is gauged, weighed or poured at a trial assembly. */
const gauged: ReadonlySet<string> = new Set(["mm", "um", "cm3", "g", "kg", "N", "N m", "deg"]);

/**
 * Dimensions to measure at the trial assembly: those that must have been measured by then, and those that a rule of
 * that stage compares as they stand, and those that would settle what is open. A rule that compares another field brings it onto the sheet.
 */
export function measuredFields({ values, rules, verdicts, report }: PaperSource): readonly string[] {
  const asked = new Set<string>(
    report.verdicts.flatMap(({ settlement }) => (settlement?.measure ?? []).map(({ path }) => path)),
  );
  for (const rule of rules.values()) {
    const verdict = verdicts.get(rule.file.id)?.verdict;
    if (verdict === undefined || verdict === "not-applicable") continue;
    const stageFits = rule.file.stages.some(
      (stage) => stage === "trial-assembly" || stage === "final-assembly",
    );
    if (!stageFits) continue;
    if (!handled.has(rule.file.otherwise.work)) continue;
    for (const { fact } of leavesOf(rule.requires)) asked.add(fact);
  }
  const due = new Set(upTo("trial-assembly"));
  const wanted = [...fields.values()].filter(({ path, spec, part }) => {
    if (spec.kind !== "dimension" || part?.bought === false) return false;
    const given = values.get(path);
    const declared = spec.measureBy !== undefined && due.has(spec.measureBy) && given !== undefined;
    const compared = asked.has(path) && gauged.has(spec.unit) && !isTarget(given);
    return declared || compared;
  });
  return wanted.map(({ path }) => path).sort((a, b) => partOrder(a) - partOrder(b));
}

function isTarget(value: unknown): boolean {
  return (
    typeof value === "object" && value !== null && "provenance" in value && value.provenance === "target"
  );
}
