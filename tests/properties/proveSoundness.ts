import { type CompiledRule, type Derivation, quantities, type VerdictWord } from "trialfit";
import { deriveAll } from "../../packages/core/src/derive/deriveAll.ts";
import { decideRule } from "../../packages/core/src/judge/decideRule.ts";
import { DrawnFacts } from "../../packages/core/src/judge/drawnFacts.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { lookupOf } from "../../packages/core/src/judge/lookupOf.ts";
import { generator } from "../differential/generator.ts";
import { directedEngines, type Engine } from "./directedEngines.ts";
import { ProofTally } from "./ProofTally.ts";
import { type Random, randomBuild, randomEngine, type Values } from "./randomBuilds.ts";
import { seekDifference } from "./seekDifference.ts";

export interface ProofTerms {
  /** Fields of the builds to begin from, defaults filled in; taken in turn. */
  readonly from: readonly Values[];
  readonly rules: readonly CompiledRule[];
  readonly builds: number;
  /** Random engines within the tolerances of each build. */
  readonly engines: number;
  readonly seed: number;
  /** Bands in place of those found: to see that wrong ones are noticed. */
  readonly spoil?: (derivation: Derivation) => Derivation;
}

/** What a rule says of one build, and of the engines that its tolerances allow. */
interface Stand {
  readonly rule: CompiledRule;
  readonly verdict: VerdictWord;
  readonly seen: Set<VerdictWord>;
}

/** The words that say something of an engine that can be built. */
const settled: ReadonlySet<VerdictWord> = new Set(["holds", "fails", "not-applicable"]);

const differs = (seen: ReadonlySet<VerdictWord>) => [...seen].filter((word) => settled.has(word)).length > 1;

/** Every verdict over the bands of a build. */
export async function judgeBands(
  values: Values,
  rules: readonly CompiledRule[],
  spoil: (derivation: Derivation) => Derivation = (derivation) => derivation,
) {
  const facts = new Set(rules.flatMap((rule) => rule.facts).filter((fact) => quantities.has(fact)));
  const derivations = new Map(
    [...deriveAll(values, quantities, facts)].map(([id, derivation]) => [id, spoil(derivation)]),
  );
  const verdicts = await judgeAll(rules, lookupOf(values, derivations));
  return { derivations, verdicts: verdicts.map(({ verdict }) => verdict) };
}

class Prover {
  private readonly tally: ProofTally;
  private readonly build: number;
  readonly facts: DrawnFacts;

  constructor(tally: ProofTally, build: number, values: Values) {
    this.tally = tally;
    this.build = build;
    this.facts = new DrawnFacts(values, values, quantities);
  }

  /** Holds what rules say of one engine to what they say of the build. */
  check(stands: readonly Stand[], engine: Engine, kind: "random" | "directed"): void {
    const lookup = this.facts.at(engine);
    for (const { rule, verdict, seen } of stands) {
      const word = decideRule(rule, lookup);
      seen.add(word);
      if (!settled.has(verdict)) continue;
      this.tally.checked[kind] += 1;
      if (!settled.has(word)) this.tally.cannotBe(rule.file.id);
      else if (word !== verdict && word !== "not-applicable")
        this.tally.contradict(`${rule.file.id}: ${verdict} in build ${this.build}, ${word} in an engine`);
    }
  }
}

async function proveBuild(tally: ProofTally, values: Values, random: Random, terms: ProofTerms) {
  const { derivations, verdicts } = await judgeBands(values, terms.rules, terms.spoil);
  for (const word of verdicts) tally.word(word);
  const stands = terms.rules.flatMap((rule, index): Stand[] => {
    const verdict = verdicts[index]!;
    return verdict === "unknown" ? [] : [{ rule, verdict, seen: new Set() }];
  });
  const prover = new Prover(tally, tally.builds, values);
  for (let number = 0; number < terms.engines; number += 1) {
    prover.check(stands, randomEngine(values, random), "random");
    tally.pairs += 1;
  }
  for (const stand of stands) {
    const { rule, verdict, seen } = stand;
    const engines = [...directedEngines(rule, values, derivations)];
    for (const engine of engines) prover.check([stand], engine, "directed");
    if (verdict !== "open") continue;
    if (!differs(seen))
      for (const engine of seekDifference(
        rule,
        values,
        derivations,
        (one) => prover.facts.at(one),
        engines,
      )) {
        prover.check([stand], engine, "directed");
        if (differs(seen)) break;
      }
    tally.opened(rule.file.id, differs(seen));
  }
  tally.builds += 1;
}

/**
 * Judges random builds over their tolerances, and engines within these tolerances at single values, and counts where
 * a certain verdict is contradicted, and where an open one rests on engines that do not differ.
 */
export async function proveSoundness(terms: ProofTerms): Promise<ProofTally> {
  const tally = new ProofTally();
  const random = generator(terms.seed);
  while (tally.builds < terms.builds)
    await proveBuild(
      tally,
      randomBuild(terms.from[tally.builds % terms.from.length]!, random),
      random,
      terms,
    );
  return tally;
}
