import * as z from "zod";
import { type FirstRunPhase, firstRunPhases } from "./firstRunPhases.ts";
import { type Operator, operators } from "./operators.ts";
import { type Standing, standings } from "./standings.ts";
import { type System, systems } from "./systems.ts";
import { type Weight, weights } from "./weights.ts";
import { type Work, works } from "./works.ts";

/** The form of every id: rules, sets, parts, sources. */
export const identifier = z
  .string()
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, "words in small letters joined by hyphens");
/** A text for people. */
export const prose = z.string().min(8).max(2000);

/** One comparison, in json-rules-engine's format: a fact against a text (with its unit), a list of words, or another fact. */
export interface Comparison {
  fact: string;
  operator: Operator;
  value: string | string[] | { fact: string };
}

/** A tree of comparisons. `all: []` and `any: []` are refused. */
export type Condition = Comparison | { all: Condition[] } | { any: Condition[] } | { not: Condition };

const comparison = z.strictObject({
  fact: z.string().min(1),
  operator: z.enum(operators),
  value: z.union([z.string(), z.array(z.string()).min(1), z.strictObject({ fact: z.string().min(1) })]),
});

export const condition: z.ZodType<Condition> = z.lazy(() =>
  z.union([
    comparison,
    z.strictObject({ all: z.array(condition).min(1) }),
    z.strictObject({ any: z.array(condition).min(1) }),
    z.strictObject({ not: condition }),
  ]),
);

const limit = z.strictObject({
  value: z.string().describe("The limit with its unit."),
  range: z.tuple([z.string(), z.string()]).describe("From where to where the trade puts it."),
  standing: z.enum(Object.keys(standings) as [Standing, ...Standing[]]).describe("How well founded it is."),
  movedBy: z.array(z.string().min(3)).describe("What moves it: use, material, boost."),
  cases: z
    .array(z.strictObject({ when: condition, value: z.string() }))
    .min(1)
    .optional()
    .describe("The first case that applies replaces the value."),
});

const confirmation = z.strictObject({
  check: prose.describe("What to look at and how, with the number to look for where there is one."),
  moment: prose.describe("When in the work it can be seen."),
  failure: prose.describe("What it looks like when it is not right."),
});

const example = z.strictObject({
  name: z.string().min(3),
  given: z
    .record(z.string(), z.string())
    .describe("Fields and quantities by name, `confirmed` by yes or no; what is left out is missing."),
  verdict: z.enum(["holds", "fails", "open", "unknown", "not-applicable"]),
  missing: z.array(z.string()).optional().describe("For unknown: the facts that it names."),
});

/** A rule file, as authored. */
export const ruleFile = z.strictObject({
  id: identifier.describe("The name of the file without .yaml. It never changes after a release."),
  title: z.string().min(8).max(120).describe("What must hold, as a sentence without its full stop."),
  system: z
    .enum(Object.keys(systems) as [System, ...System[]])
    .describe("The folder of the file: the system of the engine that it is about."),
  parts: z.array(identifier).min(1).describe("The parts that it is about, as piston or rod-bolt."),
  stages: z
    .array(z.enum(["choose", "machine", "trial-assembly", "final-assembly", "run"]))
    .min(1)
    .describe("The stages of the work at which it can be judged."),
  firstRun: z
    .enum(Object.keys(firstRunPhases) as [FirstRunPhase, ...FirstRunPhase[]])
    .optional()
    .describe("For rules of stage run: where on the first-run sheet it stands."),
  when: condition.optional().describe("When the rule is relevant. Absent: always."),
  requires: condition.describe("What must hold: comparisons of facts with limits, numbers or words."),
  confirm: confirmation
    .optional()
    .describe("For what a person sees and no number tells; `requires` then asks for the fact `confirmed`."),
  limits: z
    .record(z.string().regex(/^[a-z][A-Za-z]*$/), limit)
    .optional()
    .describe("The limits by name: { fact: limit.least } compares with the one called least."),
  otherwise: z.strictObject({
    work: z.enum(Object.keys(works) as [Work, ...Work[]]).describe("The kind of work that it asks for."),
    weight: z.enum(Object.keys(weights) as [Weight, ...Weight[]]).describe("How much it weighs."),
    do: prose.describe("What to do. {name} prints a quantity, a field or {limit.name} with its unit."),
  }),
  because: prose.describe("The reason, so that a builder recognises it."),
  caution: prose.optional().describe("What can hurt whom, and whose instructions come first."),
  disputed: prose.optional().describe("Both camps, where the trade disagrees."),
  sources: z
    .array(z.strictObject({ id: identifier, where: z.string().optional() }))
    .min(1)
    .describe("Where the limit comes from: ids of sources.yaml, and where in them."),
  examples: z
    .array(example)
    .min(2)
    .describe("Its tests: just inside, on and just outside every limit, one unknown, one not-applicable."),
});

export type RuleFile = z.infer<typeof ruleFile>;
export type LimitFile = z.infer<typeof limit>;
export type RuleExample = z.infer<typeof example>;

/** One published source, or one of the standings that stand in for a source. */
export const sourceFile = z.strictObject({
  title: z.string().min(3),
  by: z.string().min(2).optional().describe("Author, editor or standards body."),
  kind: z.enum(["standard", "handbook", "textbook", "paper", "derivation", "common-practice", "from-memory"]),
  note: z.string().optional(),
});
export type SourceFile = z.infer<typeof sourceFile>;
