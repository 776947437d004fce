import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import {
  appendExamples,
  type CatalogCount,
  countCatalog,
  formatProblem,
  printExample,
  type RuleProblem,
  type RuleReview,
  reviewRule,
} from "trialfit";
import { ExitCode } from "../../ExitCode.ts";
import { findRules } from "../../findRules.ts";
import { refuseUnknownOptions } from "../../refuseUnknownOptions.ts";
import { UsageError } from "../../UsageError.ts";

const args = {
  file: {
    type: "positional",
    required: false,
    description: "Rule files, folders of them, or sets with rules of their own; none: the whole catalog",
  },
  notes: {
    type: "boolean",
    default: true,
    description: "Also what is worth knowing and no fault",
    negativeDescription: "Only what must be mended",
  },
  adopt: {
    type: "boolean",
    description: "Write the proposed examples into the files; read them afterwards: are the verdicts meant?",
  },
  format: {
    type: "enum",
    options: ["text", "json"],
    default: "text",
    description: "How to print: text or json",
  },
} as const satisfies ArgsDef;

/** A rule file with what was found. */
interface Reviewed {
  readonly path: string;
  readonly text: string;
  readonly review: RuleReview;
  readonly problems: readonly RuleProblem[];
}

function line(problem: RuleProblem): string {
  const said = formatProblem(problem);
  return problem.weight === "note" ? `note: ${said}` : said;
}

function advice({ path, review }: Reviewed): string {
  if (review.add.length === 0) return "";
  return `\nTo be added under examples: in ${path}, if these verdicts are meant:\n${review.add.map(printExample).join("")}`;
}

function share(part: number, whole: number): string {
  return whole === 0 ? "none" : `${((100 * part) / whole).toFixed(part === whole ? 0 : 1)} %`;
}

function describeCount(count: CatalogCount, isCatalog: boolean, unscored: number): string {
  const { made, caught } = count.mutants;
  const lines = [
    `rules ${count.rules}, limits ${count.limits}, sources ${count.sources}, examples ${count.examples}`,
    `slips tried ${made}, noticed by the rules' own examples ${caught} (${share(caught, made)})`,
    ...(unscored === 0 ? [] : [`slips not tried in ${unscored} of the files: mend what stands above first`]),
  ];
  if (isCatalog) {
    const { used, shown, idle } = count.quantities;
    const without = (what: string, names: readonly string[]) =>
      `${what} without a rule: ${names.length === 0 ? "none" : names.join(", ")}`;
    lines.push(
      `quantities that rules read or rest on ${used}, only shown ${shown}, neither ${idle.length === 0 ? "0" : `${idle.length}: ${idle.join(", ")}`}`,
      without("parts", count.partsWithoutRule),
      without("stages", count.stagesWithoutRule),
    );
  }
  return `${lines.join("\n")}\n`;
}

/** Writes the proposed examples into their files, and says which. */
async function adoptExamples(reviewed: readonly Reviewed[]): Promise<string> {
  const lines = await Promise.all(
    reviewed.map(async ({ path, text, review }) => {
      if (review.add.length === 0) return "";
      const longer = appendExamples(text, review.add);
      if (longer === undefined) return `${path}: examples: is not the last key; add them by hand\n`;
      await writeFile(path, longer);
      return `${path}: ${review.add.length} written; read them: are the verdicts meant?\n`;
    }),
  );
  return lines.join("");
}

/** `trialfit rule check [FILE…]` */
export const checkRules = defineCommand({
  meta: {
    name: "check",
    description: "Check rule files: what is wrong with them, and which slips their examples would not notice",
  },
  args,
  run: async ({ args: { _: paths, notes, adopt, format }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const { texts, isCatalog, context } = await findRules(paths);
    if (adopt === true && texts.some(({ within }) => within !== undefined))
      throw new UsageError(
        "--adopt writes into rule files: name them; what stands in a set is added by hand",
      );
    const reviewed: readonly Reviewed[] = texts.map(({ path, text, within }) => {
      const review = reviewRule(text, path, context);
      const problems = review.problems
        .filter((problem) => notes === true || problem.weight === "error")
        .map((problem) =>
          within === undefined ? problem : { ...problem, file: within, line: undefined, column: undefined },
        );
      return { path: within ?? path, text, review, problems };
    });
    const problems = reviewed.flatMap((one) => one.problems);
    const errors = problems.filter((problem) => problem.weight === "error").length;
    const files = reviewed.flatMap(({ review }) => (review.file === undefined ? [] : [review.file]));
    const scores = reviewed.flatMap(({ review }) => (review.score === undefined ? [] : [review.score]));
    const count = countCatalog(files, scores);
    if (format === "json") {
      const add = Object.fromEntries(
        reviewed.filter(({ review }) => review.add.length > 0).map(({ path, review }) => [path, review.add]),
      );
      // What a catalog leaves out says nothing of some files beside it.
      const { quantities, partsWithoutRule, stagesWithoutRule, ...own } = count;
      const left = isCatalog ? { quantities, partsWithoutRule, stagesWithoutRule } : {};
      const data = { problems, add, count: { ...own, ...left } };
      process.stdout.write(`${JSON.stringify(data, null, 2)}\n`);
    } else {
      const said = problems.length === 0 ? "" : `${problems.map(line).join("\n")}\n`;
      process.stdout.write(`${said}${reviewed.map(advice).join("")}`);
      if (adopt === true) process.stdout.write(`\n${await adoptExamples(reviewed)}`);
      process.stdout.write(
        `${said === "" ? "" : "\n"}${describeCount(count, isCatalog, reviewed.length - scores.length)}`,
      );
      process.stdout.write(errors === 0 ? "Nothing to mend.\n" : `To mend: ${errors}.\n`);
    }
    process.exitCode = errors === 0 ? ExitCode.sound : ExitCode.stops;
  },
});
