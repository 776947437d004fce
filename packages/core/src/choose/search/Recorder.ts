import { factType } from "../../judge/factCatalog.ts";
import { PRICE_SHARES } from "../lists/PartsList.ts";
import { mostFirst, nearer } from "./mergeSearches.ts";
import { type Aim, scoreOf, type Totals, vectorOf } from "./Objective.ts";
import { countsForMargin } from "./Plan.ts";
import type { ProjectedJudge } from "./ProjectedJudge.ts";
import type { Question } from "./Question.ts";
import type { Scoring } from "./Scoring.ts";
import type { FallenRule, FoundParts, NearestMissed, SearchResult } from "./SearchResult.ts";
import type { SearchSpace } from "./SearchSpace.ts";
import type { Entry } from "./Standings.ts";
import { type Demand, reasonToCut, type Tally } from "./Tally.ts";
import type { Walk } from "./Walk.ts";
import { writeMiss } from "./writeMiss.ts";

/** Writes down what a walk found, in names and plain numbers, and takes up what was written down. */
export class Recorder {
  private readonly space: SearchSpace;
  private readonly judge: ProjectedJudge;
  private readonly scoring: Scoring;
  /** What earlier runs of the same search wrote of rules, by number. */
  private readonly before = new Map<number, NearestMissed>();

  private readonly demand: Demand;

  constructor(space: SearchSpace, judge: ProjectedJudge, scoring: Scoring, demand: Demand) {
    this.demand = demand;
    this.space = space;
    this.judge = judge;
    this.scoring = scoring;
  }

  /** The best combinations, and those of the front. */
  standings(walk: Walk, front: readonly Aim[]): Pick<SearchResult, "best" | "front"> {
    const write = (entries: readonly Entry[]) => entries.map(({ chosen }) => this.found(chosen));
    return {
      best: write(walk.few.entries),
      ...(front.length === 0 ? {} : { front: write(walk.front.sorted()) }),
    };
  }

  private leastMargin(chosen: Int32Array): { readonly value: number; readonly rule: string } | undefined {
    let least: { value: number; rule: string } | undefined;
    for (const index of this.judge.rules.keys()) {
      const question = this.judge.question(index, () => true)!;
      if (!countsForMargin(question)) continue;
      const { margin: value } = this.judge.ask(question, chosen);
      if (value === -Infinity) return undefined;
      if (Number.isFinite(value) && (least === undefined || value < least.value))
        least = { value, rule: question.rule.file.id };
    }
    return least;
  }

  private found(indices: readonly number[]): FoundParts {
    const chosen = Int32Array.from(indices);
    const candidates = this.space.kinds.map(({ candidates }, kind) => candidates[indices[kind]!]!);
    const { cost, mass, time } = this.scoring.totals(chosen, undefined);
    const margin = this.leastMargin(chosen);
    const questions = [...this.judge.rules.keys()].map((index) => this.judge.question(index, () => true)!);
    const said = questions
      .filter(({ isAim }) => !isAim)
      .map((question) => ({ rule: question.rule.file.id, ...this.judge.ask(question, chosen) }));
    const aims = questions.filter(({ isAim }) => isAim).map((question) => this.aim(question, chosen));
    const ids = (word: string) =>
      said.filter((one) => one.word === word && !one.toConfirm).map(({ rule }) => rule);
    return {
      parts: candidates.map(({ id, name, file }, kind) => ({
        part: this.space.kinds[kind]!.part.key,
        id,
        ...(name === undefined ? {} : { name }),
        file,
      })),
      ...(candidates.some(({ price }) => price === undefined) ? {} : { cost: cost / PRICE_SHARES }),
      ...(candidates.some(({ totalMass }) => totalMass === undefined) ? {} : { mass }),
      ...(candidates.some(({ leadTime }) => leadTime === undefined) ? {} : { time }),
      ...(margin === undefined ? {} : { margin }),
      ...(aims.length === 0 ? {} : { aims }),
      stops: {
        holds: ids("holds").length,
        open: ids("open"),
        unknown: ids("unknown"),
        toConfirm: said.filter(({ toConfirm }) => toConfirm).length,
        notApplicable: ids("not-applicable").length,
      },
    };
  }

  private aim(question: Question, chosen: Int32Array): NonNullable<FoundParts["aims"]>[number] {
    const id = question.rule.facts[0]!;
    const type = factType(id);
    const value = this.judge.reached(question, chosen);
    return {
      id,
      label: type?.label ?? id,
      ...(type?.kind === "number" ? { unit: type.unit } : {}),
      ...(type?.kind === "number" && type.decimals !== undefined ? { decimals: type.decimals } : {}),
      ...(value === undefined ? {} : { value }),
    };
  }

  /** Rules that took combinations out, those first that took out most. */
  fellOut({ fell, nearest }: Tally): FallenRule[] {
    const rules = [...fell].map(([index, counts]): FallenRule => {
      const { id, title } = this.judge.rules[index]!.file;
      const miss = nearest.get(index);
      const near = nearer(
        this.before.get(index),
        miss === undefined ? undefined : writeMiss(miss, this.space.kinds),
      );
      return { rule: id, title, ...counts, ...(near === undefined ? {} : { nearest: near }) };
    });
    return mostFirst(rules);
  }

  /** Puts into a walk what a stopped one had. Names that are not in the lists are left out. */
  takeUp(result: SearchResult, { tally, few, front }: Walk): void {
    tally.reached = result.reached;
    tally.outranked = result.outranked;
    for (const { rule, fails, unsettled, nearest } of result.fellOut) {
      const index = this.judge.rules.findIndex(({ file }) => file.id === rule);
      if (index < 0) continue;
      tally.fell.set(index, { fails, unsettled });
      if (nearest !== undefined) this.before.set(index, nearest);
    }
    for (const one of result.best) for (const entry of this.entry(one)) few.add(entry);
    for (const one of result.front ?? []) for (const entry of this.entry(one)) front.add(entry);
  }

  private fits(chosen: Int32Array): boolean {
    return [...this.judge.rules.keys()].every((index) => {
      const outcome = this.judge.ask(this.judge.question(index, () => true)!, chosen);
      return reasonToCut(outcome, this.demand) === undefined;
    });
  }

  /** What was found is judged anew: a file that was changed cannot bring in what does not fit. */
  private entry({ parts }: FoundParts): readonly Entry[] {
    const chosen = this.space.kinds.map(({ part, candidates }) =>
      candidates.findIndex(({ id }) => id === parts.find((one) => one.part === part.key)?.id),
    );
    if (chosen.some((option) => option < 0) || !this.fits(Int32Array.from(chosen))) return [];
    const { weights, front } = this.scoring;
    const counts = weights.margin > 0 || front.includes("margin");
    const margin = counts ? this.leastMargin(Int32Array.from(chosen))?.value : undefined;
    const totals: Totals = this.scoring.totals(chosen, margin);
    return [{ chosen, score: scoreOf(weights, totals), vector: vectorOf(front, totals) }];
  }
}
