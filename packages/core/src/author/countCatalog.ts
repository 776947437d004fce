import type { RuleFile } from "@trialfit/rules";
import { quantities } from "../derive/generated/quantities.ts";
import { readRule } from "../judge/compileRule.ts";
import { parts } from "../read/buildSchema.ts";
import { type Stage, stages } from "../read/FieldSpec.ts";
import type { RuleScore } from "./scoreRule.ts";

/** What a catalog of rules holds, and what it leaves out. */
export interface CatalogCount {
  readonly rules: number;
  readonly limits: number;
  /** Sources that rules name. */
  readonly sources: number;
  readonly examples: number;
  /** Slips tried, and how many of them the examples notice. */
  readonly mutants: { readonly made: number; readonly caught: number };
  /** Quantities that rules read or that feed those; that are only shown; and that do neither. */
  readonly quantities: { readonly used: number; readonly shown: number; readonly idle: readonly string[] };
  readonly partsWithoutRule: readonly string[];
  readonly stagesWithoutRule: readonly Stage[];
}

/** These quantities with all that they are computed from. */
function withInputs(ids: Iterable<string>): ReadonlySet<string> {
  const reached = new Set<string>();
  const queue = [...ids];
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    const quantity = quantities.get(id);
    if (quantity === undefined || reached.has(id)) continue;
    reached.add(id);
    queue.push(...Object.values(quantity.inputs));
  }
  return reached;
}

/** Counts a catalog. Pass the scores of its rules where they are at hand. */
export function countCatalog(files: readonly RuleFile[], scores: readonly RuleScore[] = []): CatalogCount {
  const sum = (count: (file: RuleFile) => number) => files.reduce((all, file) => all + count(file), 0);
  const used = withInputs(files.flatMap((file) => readRule(file).rule.facts));
  const displayed = [...quantities.values()].filter((quantity) => quantity.display).map(({ id }) => id);
  const shown = [...withInputs(displayed)].filter((id) => !used.has(id));
  const idle = [...quantities.keys()].filter((id) => !used.has(id) && !shown.includes(id));
  const named = new Set(files.flatMap((file) => file.parts));
  const judged = new Set(files.flatMap((file) => file.stages));
  return {
    rules: files.length,
    limits: sum((file) => Object.keys(file.limits ?? {}).length),
    sources: new Set(files.flatMap((file) => file.sources.map(({ id }) => id))).size,
    examples: sum((file) => file.examples.length),
    mutants: {
      made: scores.reduce((all, { made }) => all + made, 0),
      caught: scores.reduce((all, { caught }) => all + caught, 0),
    },
    quantities: { used: used.size, shown: shown.length, idle },
    partsWithoutRule: parts.map((part) => part.spec.id).filter((id) => !named.has(id)),
    stagesWithoutRule: stages.filter((stage) => !judged.has(stage)),
  };
}
