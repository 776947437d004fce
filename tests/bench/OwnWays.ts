import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { CompiledRule, Fact } from "trialfit";
import { compileColumns } from "../../packages/core/src/compile/compileColumns.ts";
import { compileSlots } from "../../packages/core/src/compile/compileSlots.ts";
import type { FactColumns } from "../../packages/core/src/compile/FactColumns.ts";
import type { Timed } from "./rounds.ts";
import { straightLine } from "./straightLine.ts";

type Facts = ReadonlyMap<string, Fact>;
type Straight = (l: Float64Array, h: Float64Array, k: Uint8Array, into: Uint8Array) => void;
/** Facts of one build or of a block of builds, apart from where they are judged. */
type Kept = Pick<FactColumns, "low" | "high" | "lack">;

const copyOf = ({ low, high, lack }: Kept): Kept => ({
  low: low.slice(),
  high: high.slice(),
  lack: lack.slice(),
});
const lookupOf = (facts: Facts) => (name: string) => facts.get(name)!;

/** The compiled rules, and straight-line code for comparison, over the same builds. */
export class OwnWays {
  private readonly rules: readonly CompiledRule[];
  private readonly count: number;
  private readonly slots;
  private readonly columns;
  private readonly codes: Uint8Array;

  /** @param count builds, a multiple of the size of a block */
  constructor(rules: readonly CompiledRule[], count: number) {
    this.rules = rules;
    this.count = count;
    this.slots = compileSlots(rules);
    this.columns = compileColumns(rules);
    this.codes = new Uint8Array(rules.length);
  }

  get facts(): number {
    return this.slots.slots.size;
  }
  get steps(): number {
    return this.columns.steps;
  }

  private rowsOf(builds: readonly Facts[]): readonly Kept[] {
    return builds.map((facts) => {
      this.slots.facts.fill(lookupOf(facts));
      return copyOf(this.slots.facts);
    });
  }

  private blocksOf(builds: readonly Facts[]): readonly Kept[] {
    const { room, facts } = this.columns;
    return Array.from({ length: this.count / room }, (_, block) => {
      for (let build = 0; build < room; build += 1)
        facts.fill(lookupOf(builds[block * room + build]!), build);
      return copyOf(facts);
    });
  }

  private async straight(bands: boolean): Promise<Straight> {
    const folder = mkdtempSync(join(tmpdir(), "trialfit-bench-"));
    const file = join(folder, "rules.mjs");
    writeFileSync(file, straightLine(this.rules, this.slots.slots, bands));
    const module = (await import(pathToFileURL(file).href)) as { judge: Straight };
    rmSync(folder, { recursive: true });
    return module.judge;
  }

  private bySlots({ low, high, lack }: Kept): Uint8Array {
    const { facts } = this.slots;
    facts.low.set(low);
    facts.high.set(high);
    facts.lack.set(lack);
    return this.slots.judgeAll(this.codes);
  }

  private byColumns({ low, high, lack }: Kept): Uint8Array {
    const { facts, room } = this.columns;
    facts.low.set(low);
    facts.high.set(high);
    facts.lack.set(lack);
    return this.columns.judge(room);
  }

  /**
   * Ways over some builds, after all their verdicts were compared.
   * @param bands false: single values, nothing missing
   * @throws Error where two ways differ
   */
  async over(builds: readonly Facts[], bands: boolean) {
    const [rows, blocks, straight] = [this.rowsOf(builds), this.blocksOf(builds), await this.straight(bands)];
    const { codes, columns, count } = this;
    const { room } = columns;
    const byStraight = ({ low, high, lack }: Kept) => {
      straight(low, high, lack, codes);
      return codes;
    };
    let compared = 0;
    for (const [block, facts] of blocks.entries()) {
      const found = this.byColumns(facts);
      for (let build = 0; build < room; build += 1) {
        const row = rows[block * room + build]!;
        const one = this.bySlots(row).slice();
        const other = byStraight(row);
        for (const [rule, { file }] of this.rules.entries()) {
          const column = found[rule * room + build];
          if (column !== one[rule] || one[rule] !== other[rule])
            throw new Error(
              `${file.id}: columns ${column}, closures ${one[rule]}, straight-line ${other[rule]}`,
            );
          compared += 1;
        }
      }
    }
    if (compared !== count * this.rules.length) throw new Error(`compared ${compared} verdicts`);
    const timed: readonly Timed[] = [
      {
        name: "compiled rules: closures over slots",
        builds: 1,
        run: (n) => this.bySlots(rows[n % count]!),
      },
      {
        name: "compiled rules: columns, in blocks",
        builds: room,
        run: (n) => this.byColumns(blocks[n % blocks.length]!),
      },
      { name: "straight-line code, generated", builds: 1, run: (n) => byStraight(rows[n % count]!) },
    ];
    return { timed, bySlots: (build: number) => this.bySlots(rows[build]!).slice() };
  }
}
