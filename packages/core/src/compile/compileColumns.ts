import type { CompiledRule } from "../judge/CompiledRule.ts";
import { ColumnGraph } from "./columns/ColumnGraph.ts";
import { verdictKernel } from "./columns/groupKernels.ts";
import type { Kernel } from "./columns/kernels.ts";
import { FactColumns } from "./FactColumns.ts";
import { FactSlots } from "./FactSlots.ts";

/** Builds that are judged at once unless it is said otherwise: their facts stay in the fast memory of a processor. */
const ROOM = 128;

/** Rules that judge many builds at once. */
export interface ColumnRules {
  readonly slots: FactSlots;
  /** The facts that are judged; put those of the next builds in and judge again. */
  readonly facts: FactColumns;
  /** Builds for which there is room. */
  readonly room: number;
  /** Different conditions and limits that are worked out for a block. */
  readonly steps: number;
  /** Verdicts that were given so far. */
  readonly judged: number;
  /**
   * Verdicts of the first builds, as codes of `verdictCodes`: that of a rule on a build is at `rule × room + build`.
   * Serves until the next call.
   * @param count whole number from 0 to `room`
   * @throws RangeError when there is no room for so many
   */
  judge(count: number): Uint8Array;
}

/**
 * Compiles rules once to columns: each different comparison is worked out once for a block of builds, whichever rules
 * ask for it. For many builds; `compileSlots` for one after the other. A differential test holds it to
 * json-rules-engine.
 * @param room builds in a block, a whole number from 1
 */
export function compileColumns(rules: readonly CompiledRule[], room = ROOM): ColumnRules {
  // Outcomes are worked on four at once.
  const padded = 4 * Math.ceil(room / 4);
  const slots = new FactSlots(rules);
  const facts = new FactColumns(slots, padded);
  const graph = new ColumnGraph(facts);
  const verdicts = new Uint8Array(rules.length * padded);
  const last: Kernel[] = rules.map((rule, index) =>
    verdictKernel(
      rule.when === undefined ? undefined : graph.condition(rule.when, rule),
      graph.condition(rule.requires, rule),
      new Int32Array(verdicts.buffer, index * padded, padded / 4),
    ),
  );
  const kernels = [...graph.kernels, ...last];
  let judged = 0;
  return {
    slots,
    facts,
    room: padded,
    steps: graph.kernels.length,
    get judged() {
      return judged;
    },
    judge: (count) => {
      if (!Number.isInteger(count) || count < 0 || count > padded)
        throw new RangeError(`found ${count} builds; expected 0 to ${padded}`);
      for (let index = 0; index < kernels.length; index += 1) kernels[index]!(count);
      judged += count * rules.length;
      return verdicts;
    },
  };
}
