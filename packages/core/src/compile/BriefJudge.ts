import { quantities } from "../derive/generated/quantities.ts";
import { differingFields } from "../derive/places.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decide } from "../judge/decide.ts";
import { withLimits } from "../judge/decideRule.ts";
import { judgeBuild } from "../judge/judgeBuild.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Build } from "../read/Build.ts";
import { confirmationPath } from "../read/confirmations.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { BuildGround } from "./partial/BuildGround.ts";
import { costOf } from "./partial/costOf.ts";
import { StagedRules } from "./partial/StagedRules.ts";
import { verdictCodes } from "./verdictCodes.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** What all rules say of a build, without reasons; plain data in a stable order. */
export interface BriefVerdicts {
  /** True when every stop rule that is or may be relevant surely holds; what a person must look at does not count. */
  readonly sound: boolean;
  /** How many rules hold, and how many are not relevant. */
  readonly holds: number;
  readonly notApplicable: number;
  /** Ids of the others, each in the order of the rules. */
  readonly fails: readonly string[];
  readonly open: readonly string[];
  readonly unknown: readonly string[];
  /** Nothing is missing but what a person must look at. */
  readonly toConfirm: readonly string[];
  /** Paths of the fields that were left out and taken at their documented default. */
  readonly assumed: readonly string[];
}

/** A verdict, and whether nothing but a person's word is missing to it. */
interface Said {
  readonly word: VerdictWord;
  readonly toConfirm: boolean;
}

/**
 * Judges one build after the other, for as many as there are: only the verdicts, and of quantities only those on which
 * one hangs. They are those of `evaluate` without a stage and without a set.
 */
export class BriefJudge {
  private readonly rules: readonly CompiledRule[];
  private readonly staged: StagedRules;
  private readonly ground: BuildGround;

  /** @param rules from `compileRules` */
  constructor(rules: readonly CompiledRule[]) {
    this.rules = rules;
    this.staged = new StagedRules(rules, (name) => costOf(quantities, name));
    this.ground = new BuildGround(this.staged.compiled);
  }

  /** One build at a time: the next one when this one is done. */
  async judge(build: Build): Promise<BriefVerdicts> {
    const values = withDefaults(build);
    // Readings by cylinder, crankpin or main bearing have a worst place, which the ordinary way finds.
    const said =
      differingFields(values).size > 0 ? await this.byPlaces(values) : this.rules.map(this.saidBy(values));
    const those = (holds: (said: Said) => boolean) =>
      this.rules.flatMap(({ file }, rule) => (holds(said[rule]!) ? [file.id] : []));
    const stops = this.rules.filter(
      ({ file }, rule) =>
        file.otherwise.weight === "stop" &&
        !["holds", "not-applicable"].includes(said[rule]!.word) &&
        !said[rule]!.toConfirm,
    );
    return {
      sound: stops.length === 0 && this.rules.length > 0,
      holds: those(({ word }) => word === "holds").length,
      notApplicable: those(({ word }) => word === "not-applicable").length,
      fails: those(({ word }) => word === "fails"),
      open: those(({ word }) => word === "open"),
      unknown: those(({ word, toConfirm }) => word === "unknown" && !toConfirm),
      toConfirm: those(({ toConfirm }) => toConfirm),
      assumed: [...values.keys()].filter((path) => !build.values.has(path)),
    };
  }

  private saidBy(values: Values): (rule: CompiledRule, index: number) => Said {
    this.ground.load(values);
    return (rule, index) => {
      const word = verdictCodes[this.staged.code(index, this.ground, false)]!;
      return { word, toConfirm: word === "unknown" && this.awaitsConfirmation(rule) };
    };
  }

  private awaitsConfirmation(rule: CompiledRule): boolean {
    if (rule.file.confirm === undefined) return false;
    const own = confirmationPath(rule.file.id);
    const lookup = withLimits(rule, (name) => this.ground.fact(name));
    return [rule.when, rule.requires]
      .flatMap((node) => (node === undefined ? [] : [decide(node, lookup)]))
      .every(({ missing, reasons }) => reasons.length === 0 && missing.every((path) => path === own));
  }

  private async byPlaces(values: Values): Promise<readonly Said[]> {
    const { judged } = await judgeBuild(values, this.rules, quantities, []);
    const found = new Map(judged.map(({ rule, verdict }) => [rule, verdict]));
    return this.rules.map((rule): Said => {
      const verdict = found.get(rule);
      if (verdict === undefined) return { word: "not-applicable", toConfirm: false };
      const own = confirmationPath(rule.file.id);
      const toConfirm =
        verdict.verdict === "unknown" &&
        verdict.reasons.length === 0 &&
        verdict.missing.every((path) => path === own);
      return { word: verdict.verdict, toConfirm };
    });
  }
}
