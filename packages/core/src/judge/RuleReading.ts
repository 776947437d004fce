import type { RuleFile } from "@trialfit/rules";
import { nearestWord } from "../read/nearestWord.ts";
import { DimensionError, parseDimension } from "../units/parseDimension.ts";
import { factNames, factType } from "./factCatalog.ts";
import type { IssueKind, RuleIssue } from "./RuleIssue.ts";

/** A place in the data of a rule file. */
export type Path = readonly (string | number)[];

const LIMIT = /^limit\.([a-z][A-Za-z]*)$/;

/** The name of a limit in `limit.least`, or undefined for any other fact. */
export function limitName(fact: string): string | undefined {
  return LIMIT.exec(fact)?.[1];
}

const issueOfDimension: Readonly<Record<DimensionError["flaw"], IssueKind>> = {
  "wrong-unit": "wrong-unit",
  "no-unit": "no-unit",
  other: "not-a-number",
};

/** The reading of one rule file: what was found wrong so far, and which fact lends each limit its unit. */
export class RuleReading {
  readonly issues: RuleIssue[] = [];
  readonly file: RuleFile;
  /** Limits that something is compared with, even where that something is misspelled. */
  readonly usedLimits = new Set<string>();
  /** The fact that each limit is compared with first. */
  readonly limitFacts = new Map<string, string>();

  /** Whether a condition asks for what a person saw. */
  asksToConfirm = false;

  constructor(file: RuleFile) {
    this.file = file;
  }

  report(
    kind: IssueKind,
    path: Path,
    found: string,
    expected: string,
    { didYouMean, key }: { didYouMean?: string | undefined; key?: boolean } = {},
  ): void {
    this.issues.push({
      kind,
      path,
      found,
      expected,
      ...(key === undefined ? {} : { key }),
      ...(didYouMean === undefined ? {} : { didYouMean }),
    });
  }

  unknownFact(name: string, path: Path): void {
    const expected =
      "a field such as block.bore or a quantity such as deckClearance (`trialfit explain NAME`)";
    const didYouMean = nearestWord(name, factNames());
    this.report("unknown-fact", path, `"${name}", which is no field and no quantity`, expected, {
      didYouMean,
    });
  }

  /** A number in SI, or NaN where the text is none of this unit's kind. */
  number(text: string, unit: string, path: Path): number {
    try {
      const { nominal, minus } = parseDimension(text, { unit });
      if (minus !== undefined)
        this.report("not-a-number", path, `"${text}", a limit with a tolerance`, "one number with its unit");
      return nominal;
    } catch (error) {
      if (!(error instanceof DimensionError)) throw error;
      this.report(issueOfDimension[error.flaw], path, `"${text}" (${error.message})`, error.expected);
      return Number.NaN;
    }
  }

  /** The unit of the fact that a limit is compared with, once its conditions have been read. */
  unitOfLimit(limit: string): string | undefined {
    const fact = this.limitFacts.get(limit);
    const type = fact === undefined ? undefined : factType(fact);
    return type?.kind === "number" ? type.unit : undefined;
  }
}
