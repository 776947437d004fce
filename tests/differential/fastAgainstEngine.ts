import type { CompiledRule, Fact } from "trialfit";
import { type ColumnRules, compileColumns } from "../../packages/core/src/compile/compileColumns.ts";
import { compileSlots, type SlotRules } from "../../packages/core/src/compile/compileSlots.ts";
import { verdictCodes } from "../../packages/core/src/compile/verdictCodes.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";

/** What json-rules-engine and both compiled forms said of the same pairs of rule and build. */
export interface FastTally {
  readonly compared: number;
  /** Verdicts that the compiled forms gave by their own count. */
  readonly bySlots: number;
  readonly byColumns: number;
  /** How often the engine said each word. */
  readonly words: Readonly<Record<string, number>>;
  /** The first pairs on which they differ. */
  readonly differences: readonly string[];
}

const SHOWN = 5;

/**
 * Judges builds by json-rules-engine, by closures over slots and by columns.
 * @param builds facts of each; one that is not there is missing
 * @param slots the compiled forms, handed in to be spoiled
 */
export async function fastAgainstEngine(
  rules: readonly CompiledRule[],
  builds: Iterable<ReadonlyMap<string, Fact>>,
  slots: SlotRules = compileSlots(rules),
  columns: ColumnRules = compileColumns(rules),
): Promise<FastTally> {
  const words: Record<string, number> = {};
  const differences: string[] = [];
  let compared = 0;
  let block: (readonly string[])[] = [];
  const differ = (form: string, rule: number, engine: string, code: number | undefined) => {
    const said = verdictCodes[code ?? -1];
    if (said !== engine && differences.length < SHOWN)
      differences.push(`${rules[rule]!.file.id}: the engine says ${engine}, ${form} ${said}`);
  };
  const finishBlock = () => {
    const codes = columns.judge(block.length);
    for (const [build, verdicts] of block.entries())
      for (const [rule, engine] of verdicts.entries())
        differ("columns", rule, engine, codes[rule * columns.room + build]);
    block = [];
  };
  for (const facts of builds) {
    const lookup = (name: string): Fact => facts.get(name) ?? { kind: "missing", missing: [name] };
    const verdicts = (await judgeAll(rules, lookup)).map(({ verdict }) => verdict);
    const codes = slots.judge(lookup);
    for (const [rule, engine] of verdicts.entries()) {
      differ("slots", rule, engine, codes[rule]);
      words[engine] = (words[engine] ?? 0) + 1;
      compared += 1;
    }
    columns.facts.fill(lookup, block.length);
    block.push(verdicts);
    if (block.length === columns.room) finishBlock();
  }
  finishBlock();
  return { compared, bySlots: slots.judged, byColumns: columns.judged, words, differences };
}
