import type { Derivation } from "../derive/Derivation.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Build } from "../read/Build.ts";
import type { FieldValue } from "../read/FieldValue.ts";

/** One part that can be chosen: the fields that it puts into the build, by path, as `Build.values` has them. */
export interface PartOption {
  readonly values: ReadonlyMap<string, FieldValue>;
}

/**
 * Parts of one kind, of which one is chosen. A field that any of them gives is a field of this kind: one that the
 * chosen part does not give is missing, or takes its default, whatever the fixed build has under that path.
 */
export interface PartKind {
  /** For people and messages: `piston`. */
  readonly name: string;
  readonly options: readonly PartOption[];
}

/** What is judged: what stands, what can be chosen, and by which rules. */
export interface PartialJudgeInput {
  /** What is the same whatever is chosen, as it was read: defaults are filled in here. */
  readonly fixed: Build;
  /** In the order in which they are chosen. */
  readonly kinds: readonly PartKind[];
  /** From `compileRules`. Asked in this order: `cheapestFirst` gives one that cuts soon. */
  readonly rules: readonly CompiledRule[];
}

/** Work that was done so far, whole numbers. */
export interface PartialJudgeCounts {
  /** Verdicts that were asked for. */
  readonly asked: number;
  /** Of these, those that were not remembered. */
  readonly judged: number;
  /** Quantities that were derived with their bands; all others were remembered. */
  readonly derived: number;
}

/**
 * Judges combinations of parts while they are being chosen, kind after kind. A level is the index of a kind in
 * `kinds`; level −1 is the fixed build before any part is chosen.
 *
 * While kinds are not chosen yet, a fact is taken for missing when any field that it may rest on (by whatever way to
 * it, defaults included) belongs to such a kind. So a rule fails only if it fails whatever is chosen later: what
 * fails or is not applicable stays so, and what holds can only turn out not to be applicable. A rule that rests on
 * readings by cylinder, crankpin or main bearing is judged at each once all is chosen that says where; until then what
 * differs between them counts as missing. With every kind chosen the verdicts are those of `evaluate` without a stage on the
 * fixed build with the fields of the chosen parts.
 */
export interface PartialJudge {
  readonly kinds: readonly PartKind[];
  readonly rules: readonly CompiledRule[];
  readonly counts: PartialJudgeCounts;
  /** How many kinds are chosen, from the first: 0 to `kinds.length`. */
  readonly chosen: number;

  /**
   * Chooses a part of one kind; deeper levels are not chosen any more.
   * @param level from 0 to `chosen`
   * @param option index in the kind's options
   * @throws RangeError when a level before is not chosen, or there is no such level or option
   */
  choose(level: number, option: number): void;

  /**
   * The first rule in `rules` that surely fails on what is chosen so far, of those about which this level says
   * something new; rules behind it are not asked. In a search that cuts at each failure no other rule can fail.
   * @param level the last chosen level, or −1 with nothing chosen
   * @returns index in `rules`, or −1 when none surely fails
   */
  failureAt(level: number): number;

  /** Every rule about which this level says something new that surely fails, in the order of `rules`. */
  failuresAt(level: number): readonly number[];

  /** What a rule says by what is chosen so far: facts that are not settled count as missing. */
  word(rule: number): VerdictWord;

  /**
   * What every rule says by what is chosen so far, as codes of `verdictCodes` in the order of `rules`. Serves until the
   * next call: only rules on which a level chosen since the last call may have an influence are asked again.
   */
  verdicts(): Uint8Array;

  /**
   * How far a rule is from its limits at the worst end of the bands, relative, by what is chosen so far: of each
   * comparison in `requires` the least difference on the good side over the greater of both sides in size (−2 to 2;
   * positive: holds, zero: on the limit), the least of `all`, the greatest of `any`. A comparison of words is +∞ or
   * −∞. NaN where a fact that decides it is missing; +∞ where the rule is not applicable.
   */
  margin(rule: number): number;

  /** What is derived of a quantity by now; undefined while it is not settled, or where no rule asks for it. */
  derivation(id: string): Derivation | undefined;

  /** Levels on which the verdict of a rule may rest, from the first; none: it is the same whatever is chosen. */
  levelsOf(rule: number): readonly number[];

  /**
   * For each option of a kind the first option that no rule here can tell from it: of such options the verdicts and
   * margins are the same in every combination.
   */
  sameAs(level: number): readonly number[];
}
