import type { Use } from "@trialfit/rules";
import { exchangeParts } from "../choose/exchangeParts.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { finish, type Steps } from "../derive/Steps.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { AppliedSet } from "../judge/AppliedSet.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { compileRules } from "../judge/compileRules.ts";
import { withSettlement } from "../judge/howToSettle.ts";
import type { Judged } from "../judge/Judged.ts";
import { Judging } from "../judge/Judging.ts";
import { checkDrawing, type Samples, sampleInSteps } from "../judge/sampleVerdicts.ts";
import { asOfStage } from "../judge/unmeasured.ts";
import { asBuild } from "../read/asBuild.ts";
import type { Build } from "../read/Build.ts";
import { checkStage } from "../read/checkStage.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { makeReport } from "../report/makeReport.ts";
import type { Report, ReportExchange } from "../report/Report.ts";
import { applySetTo, type RuleCatalog } from "../sets/applySetTo.ts";
import type { EvaluationOptions } from "./EvaluationOptions.ts";
import { pendingOf } from "./pendingOf.ts";

/** The build as if it stated this use. */
function forUse(build: Build, use: Use): Build {
  const values = new Map(build.values);
  values.set("use", { kind: "choice", value: use, provenance: "target" });
  return { ...build, values };
}

/** One evaluation: the work it takes, in pieces, and a report that can be asked for at any time. */
export class Evaluation {
  private readonly build: Build;
  private readonly options: EvaluationOptions;
  readonly set: AppliedSet | undefined;
  /** Fields of the build, defaults filled in. */
  readonly values: ReadonlyMap<string, FieldValue>;
  private readonly every: readonly CompiledRule[];
  /** Rules that are judged. */
  readonly rules: readonly CompiledRule[];
  private readonly judging: Judging;
  private readonly settled = new Map<CompiledRule, Judged>();
  private exchanges: readonly ReportExchange[] = [];
  private samples: Samples | undefined;
  private done = false;

  /**
   * @param input a build, or plain data in the shape of a build file
   * @param catalog rules to judge by, and sets that can be named. Untrusted: checked like any input
   * @throws InputError, RuleError, SetError, RangeError as `evaluate` does
   */
  constructor(input: unknown, catalog: RuleCatalog, options: EvaluationOptions) {
    const { stage, sets, quantities: more = [], statistics } = options;
    checkStage(stage);
    if (statistics !== undefined) checkDrawing(statistics);
    this.options = options;
    this.build = asBuild(input);
    this.set = sets === undefined ? undefined : applySetTo(sets, catalog);
    const { set } = this;
    this.values = withDefaults(set?.use === undefined ? this.build : forUse(this.build, set.use));
    this.every = compileRules(set?.rules ?? catalog.rules);
    this.rules =
      stage === undefined ? this.every : this.every.filter((rule) => rule.file.stages.includes(stage));
    this.judging = new Judging(
      this.values,
      this.rules,
      quantities,
      more === "all" ? quantities.keys() : more,
    );
  }

  /** The work, piece by piece; each is to be finished before the next is asked for. */
  async *work(): AsyncGenerator<Steps<void>, void, void> {
    yield this.judging.derive();
    await this.judging.judgeReady();
    yield this.settle();
    yield this.exchange();
    yield this.draw();
    this.done = true;
  }

  private *settle(): Steps<void> {
    for (const judged of this.judged()) {
      this.settled.set(judged.rule, yield* withSettlement(judged, quantities));
      yield;
    }
  }

  private *exchange(): Steps<void> {
    this.exchanges = yield* exchangeParts(this.values, quantities, this.judged());
  }

  private *draw(): Steps<void> {
    const { quantities: more, statistics } = this.options;
    if (statistics === undefined) return;
    const asked = new Set([
      ...this.rules.flatMap((rule) => rule.facts),
      ...(more === "all" ? [] : (more ?? [])),
    ]);
    this.samples = yield* sampleInSteps(this.values, this.rules, quantities, asked, statistics);
  }

  /** Counts everything that was found, to see whether a report would say more than one before. */
  get found(): number {
    return this.judging.found + this.settled.size;
  }

  private judged(): readonly Judged[] {
    return this.judging
      .judged()
      .map((one) => this.settled.get(one.rule) ?? asOfStage(one, this.options.stage));
  }

  /** Does the whole work. */
  async finish(): Promise<Report> {
    for await (const piece of this.work()) finish(piece);
    return this.report();
  }

  /** What is known by now: every rule whose quantities are there is judged. */
  async report(): Promise<Report> {
    await this.judging.judgeReady();
    const { build, values, set, exchanges, samples, judging } = this;
    const { stage, statistics } = this.options;
    const judged = this.judged();
    const unsettled = judged.filter(({ rule }) => !this.settled.has(rule));
    return makeReport({
      build,
      values,
      derivations: judging.derivations,
      judged,
      exchanges,
      stage: stage ?? "all",
      rules: this.every.map((rule) => rule.file.id),
      drawn: samples === undefined ? undefined : { drawing: statistics!, samples },
      set,
      pending: this.done ? undefined : pendingOf(judging, unsettled, values),
    });
  }
}
