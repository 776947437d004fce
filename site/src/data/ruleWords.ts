import { firstRunPhases, operators, standings, systems, uses, weights, works } from "@trialfit/rules";
import { operatorWords, parts, verdictWords } from "trialfit";
import { stageWords } from "./stageWords.ts";

interface WordGroup {
  /** The key of a rule file that takes these words. */
  readonly key: string;
  readonly words: Readonly<Record<string, string>>;
}

/** Every word that a rule file takes from a list, with what it means. */
export const ruleWords: readonly WordGroup[] = [
  {
    key: "operator",
    words: Object.fromEntries(operators.map((word) => [word, operatorWords[word] || "is"])),
  },
  { key: "system", words: systems },
  { key: "parts", words: Object.fromEntries(parts.map(({ spec }) => [spec.id, spec.label])) },
  { key: "stages", words: stageWords },
  { key: "firstRun", words: firstRunPhases },
  { key: "standing", words: standings },
  { key: "work", words: works },
  { key: "weight", words: weights },
  { key: "verdict", words: verdictWords },
  { key: "use", words: uses },
];
