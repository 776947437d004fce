import { type RuleFile, ruleFiles, type SetFile, setFiles } from "@trialfit/rules";
import { quantities } from "../../derive/generated/quantities.ts";
import { compileRules } from "../../judge/compileRules.ts";
import type { StopSignal } from "../../live/refine.ts";
import { BREATH, takeBreath } from "../../live/takeBreath.ts";
import { asBuild } from "../../read/asBuild.ts";
import { checkStage } from "../../read/checkStage.ts";
import type { Stage } from "../../read/FieldSpec.ts";
import { applySetTo } from "../../sets/applySetTo.ts";
import type { ListedPart, PartsList } from "../lists/PartsList.ts";
import type { Aim } from "./Objective.ts";
import type { WeightTexts } from "./readWeights.ts";
import type { SearchResult } from "./SearchResult.ts";
import { SearchRun } from "./SearchRun.ts";
import type { Demand } from "./Tally.ts";

/** What is searched, and what for. */
export interface SearchOptions {
  /** The build whose parts are exchanged: from `readBuildText`, or plain data in the shape of a build file. */
  readonly fixed: unknown;
  /** Lists of parts to choose from. Kinds of which there is no list keep the part that the build has. */
  readonly candidates: readonly PartsList[];
  /** What combinations are compared by: one aim, or weights that say what each is worth as money. Absent: cost. */
  readonly objective?: Aim | WeightTexts;
  /** Rules in place of the shipped catalog. Untrusted: checked like any input. Only stop rules are asked. */
  readonly rules?: readonly RuleFile[];
  /** Sets of rules, as `evaluate` takes them: a silenced rule takes nothing out. */
  readonly sets?: readonly (string | SetFile)[];
  /** Ask only the rules of this stage. Absent: every stop rule. */
  readonly stage?: Stage;
  /** How many of the best combinations to return, at most 1000. Absent: 10. */
  readonly best?: number;
  /** Aims of a front: combinations that no other beats in all of them. Absent: none. */
  readonly front?: readonly Aim[];
  /**
   * True: demand that every stop rule surely holds, but for what a person has to confirm, and that every aim can be
   * worked out. `known`: that every stop rule and aim can be worked out, so that no part gains by what is not stated of
   * it. Absent: none may surely fail.
   */
  readonly demand?: Demand;
  /** Take only parts that are in stock. */
  readonly inStock?: boolean;
  /** Count every combination that fits, also those that cannot be among the best. Takes as long as there are many. */
  readonly countAll?: boolean;
  /** Search one part of all combinations: number `part` of `of`, from 1. Results of all parts are merged. */
  readonly shard?: { readonly part: number; readonly of: number };
  /** What a search on the same terms found before it was stopped: it goes on from there. Untrusted. */
  readonly from?: unknown;
  /** When it is aborted, the search ends at the next breath with what it has: `complete` is false, and it can go on. */
  readonly signal?: StopSignal;
  /** Is told from time to time how far the search is. */
  readonly onProgress?: (progress: SearchProgress) => void;
}

export interface SearchProgress {
  /** Part of the way that is behind, 0 to 1; branches differ in length, so it runs unevenly. */
  readonly share: number;
  /** Time since it began, and as long as the rest would take at the same pace [s]. */
  readonly elapsed: number;
  readonly remaining: number;
  /** Choices looked at. */
  readonly steps: number;
  /** What was found so far, to be kept in case that the search is stopped. */
  readonly result: () => SearchResult;
}

/** Time between two words of how far it is [ms]. */
const BETWEEN = 250;

/** @throws TypeError where code without types hands in what no reader of lists has read: its sizes would not be seen */
function checkCandidates(candidates: readonly PartsList[]): void {
  const isRead = (list: Partial<PartsList> | undefined) =>
    Array.isArray(list?.parts) && list.parts.every((part: Partial<ListedPart>) => part.values instanceof Map);
  if (candidates.every(isRead)) return;
  throw new TypeError("candidates: expected lists as readPartsList or readPartsListText gives them");
}

/**
 * Searches all combinations of parts from lists for the best by an objective, none of which surely breaks a stop rule or
 * misses an aim of the build at nominal values.
 * Exact: the answer is that of evaluating every combination; of equal ones those whose ids come first, kind by kind in
 * the order of the build file. A rule that is open or unknown takes nothing out unless that is demanded; the result
 * says of each combination how many are.
 * @throws TypeError when lists were not read; InputError when build or lists cannot be used together, a part lacks what the objective adds up, or `from` is
 * of another search; DimensionError when weights cannot be read; RangeError when there is no such stage, or a count or shard is
 * no whole number in its range; RuleError and SetError as `evaluate`
 */
export async function search(options: SearchOptions): Promise<SearchResult> {
  const { signal, onProgress, sets, stage } = options;
  checkStage(stage);
  checkCandidates(options.candidates);
  const set =
    sets === undefined ? undefined : applySetTo(sets, { rules: options.rules ?? ruleFiles, sets: setFiles });
  const rules = compileRules(set?.rules ?? options.rules ?? ruleFiles).filter(
    ({ file }) =>
      file.otherwise.weight === "stop" &&
      set?.silenced.has(file.id) !== true &&
      (stage === undefined || file.stages.includes(stage)),
  );
  const build = asBuild(options.fixed);
  const values = new Map(build.values);
  if (set?.use !== undefined) values.set("use", { kind: "choice", value: set.use, provenance: "target" });
  const run = new SearchRun({ ...build, values }, rules, quantities, { ...options, set: set?.id });
  const begun = Date.now();
  const startedAt = run.walk.path.progress;
  let breathed = begun;
  let told = begun;
  while (!run.walk.done) {
    run.walk.step();
    const now = Date.now();
    if (now - breathed < BREATH) continue;
    await takeBreath();
    breathed = Date.now();
    if (signal?.aborted === true) return run.result();
    if (onProgress === undefined || breathed - told < BETWEEN) continue;
    told = breathed;
    const share = run.walk.path.progress;
    const elapsed = (breathed - begun) / 1000;
    const remaining = share > startedAt ? (elapsed * (1 - share)) / (share - startedAt) : Infinity;
    onProgress({ share, elapsed, remaining, steps: run.walk.steps, result: () => run.result() });
  }
  return run.result();
}
