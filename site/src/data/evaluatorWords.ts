import { standings, uses, weights, works } from "@trialfit/rules";
import { type Provenance, provenances, verdictWords } from "trialfit";
import { stageWords } from "./stageWords.ts";

/** Words with what they mean, under one heading. */
export interface WordGroup {
  readonly id: string;
  readonly title: string;
  readonly words: Readonly<Record<string, string>>;
}

const provenanceWords: Readonly<Record<Provenance, string>> = {
  "data-sheet": "published by the part maker",
  measured: "read off with an instrument on this very part",
  assumed: "taken without knowing; the report lists it with its reason",
  target: "what the builder wants, such as power or compression ratio",
};

const general: WordGroup["words"] = {
  build: "one planned engine, written down as a file: its parts, their sizes, what it is for",
  field: "one thing that a build file says, such as the stroke of the crankshaft",
  quantity: "a number that is computed from fields, with its formula or method",
  fact: "a field or a quantity, as a rule names it",
  rule: "something that must hold of an engine, with its reason, its limits and their sources",
  limit: "the number that a fact is held against, with the range in which the trade puts it",
  tolerance: "how far a part may differ from the size that is written down",
  band: "the lowest and highest value that a number can have while every part stays within its tolerance",
  "worst case": "the end of a band that is nearest to trouble",
  margin: "distance of a value from its limit, with what is to spare or short",
  verdict: "what a rule says of one build",
  finding: "a verdict that asks somebody to do something",
  remedy: "what to do about a finding, with this build’s own numbers",
  nominal: "the size that is written down, without its tolerance",
  assumption: "a usual value taken for a field that was left out; listed in every report",
  confirmation: "what a person who looked wrote down, where no number tells",
  reading: "one measured size at one place, such as the bore of cylinder 3",
  "set of rules":
    "the catalog as one shop uses it: limits changed or rules silenced, each by name and with its reason",
  departure: "a place where a set differs from the catalog; printed in every report",
  silenced: "judged and shown, but not counted, by a decision of the shop",
  sound: "said of a build of which every stop rule that applies surely holds",
  draw: "one engine picked at random within the tolerances; shows how values scatter and changes no verdict",
};

/** The words that reports and pages use of a build, from where the evaluator declares them. */
export const evaluatorWords: readonly WordGroup[] = [
  { id: "general", title: "Of builds and rules", words: general },
  { id: "verdicts", title: "Verdicts", words: verdictWords },
  { id: "weights", title: "Weights of a finding", words: weights },
  { id: "works", title: "Kinds of work", words: works },
  { id: "stages", title: "Stages of a build", words: stageWords },
  { id: "standings", title: "Standing of a limit", words: standings },
  {
    id: "provenances",
    title: "Where a value comes from",
    words: Object.fromEntries(provenances.map((one) => [one, provenanceWords[one]])),
  },
  { id: "uses", title: "Uses of an engine", words: uses },
];
