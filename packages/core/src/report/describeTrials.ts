import type { RuleFile } from "@trialfit/rules";
import { type VerdictWord, verdictWords } from "../judge/Verdict.ts";
import type { ReportDocument, Tone } from "./ReportDocument.ts";

/** What a rule says of one of several builds. */
export interface TrialVerdict {
  readonly build: string;
  readonly verdict: VerdictWord;
  /** What the rule of the same id in the catalog says, where there is one. */
  readonly inCatalog: VerdictWord | undefined;
}

const TONES: Readonly<Record<VerdictWord, Tone>> = {
  holds: "good",
  fails: "bad",
  open: "doubt",
  unknown: "doubt",
  "not-applicable": "faint",
};

function besideCatalog({ verdict, inCatalog }: TrialVerdict): string {
  if (inCatalog === undefined) return "the catalog has no rule of this id yet";
  return inCatalog === verdict ? "as in the catalog" : `changed: the catalog says ${inCatalog}`;
}

/** One rule on several builds, a line each, beside what the catalog says of them. */
export function describeTrials(file: RuleFile, trials: readonly TrialVerdict[]): ReportDocument {
  return {
    title: file.title,
    lead: [{ text: "on the demo builds; name a build file for the comparisons and the remedy" }],
    sections: [
      {
        heading: `Verdicts (${trials.length})`,
        items: trials.map((trial) => ({
          title: `${trial.build}: ${trial.verdict}`,
          tone: TONES[trial.verdict],
          lines: [
            { label: "means", text: verdictWords[trial.verdict] },
            { label: "catalog", text: besideCatalog(trial) },
          ],
        })),
      },
    ],
    closing: [],
  };
}
