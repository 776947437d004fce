import { firstRunPhases, type RuleFile } from "@trialfit/rules";
import { nearestWord } from "../read/nearestWord.ts";
import { type CompiledRule, leavesOf } from "./CompiledRule.ts";
import { CONFIRMED, factNames, factType } from "./factCatalog.ts";
import { RuleError } from "./RuleError.ts";
import type { RuleIssue } from "./RuleIssue.ts";
import { limitName, type Path, RuleReading } from "./RuleReading.ts";
import { readCondition } from "./readCondition.ts";
import { readLimit } from "./readLimit.ts";
import { strayBraces, templateNames } from "./templateNames.ts";

/** A rule in the form that is judged, with everything that is wrong with its file. */
export interface ReadRule {
  /** Not to be trusted while there are issues: what cannot be read is no number in it. */
  readonly rule: CompiledRule;
  readonly issues: readonly RuleIssue[];
}

/** Refuses braces that hold no name, and names in braces that print nothing. */
function readText(reading: RuleReading, text: string, path: Path): readonly string[] {
  const names = templateNames(text);
  const limits = Object.keys(reading.file.limits ?? {}).map((name) => `limit.${name}`);
  for (const piece of new Set(strayBraces(text))) {
    const isPair = piece.startsWith("{") && piece.endsWith("}");
    const found = isPair ? `"${piece}", which prints nothing` : `"${piece}", a brace without its other half`;
    const near = nearestWord(piece.replace(/[^A-Za-z0-9.]/g, ""), [...factNames(), ...limits]);
    const didYouMean = near === undefined ? undefined : `{${near}}`;
    const expected = "a name alone in the braces, as {deckClearance}: no blank, no hyphen";
    reading.report("braces-without-name", path, found, expected, { didYouMean });
  }
  for (const name of new Set(names)) {
    if (limitName(name) === undefined ? factType(name) !== undefined : limits.includes(name)) continue;
    const expected = "a field, a quantity or one of its limits in the braces";
    const didYouMean = nearestWord(name, [...factNames(), ...limits]);
    reading.report("unknown-name-in-text", path, `"{${name}}", which prints nothing`, expected, {
      didYouMean,
    });
  }
  return names;
}

/** Refuses braces in texts where nothing is printed for them. */
function refuseBraces(reading: RuleReading): void {
  const { title, caution, disputed, confirm } = reading.file;
  const texts = Object.entries({ title, caution, disputed, ...confirm });
  for (const [key, text] of texts) {
    if (text === undefined || !/[{}]/.test(text)) continue;
    const path = confirm !== undefined && Object.hasOwn(confirm, key) ? ["confirm", key] : [key];
    const found = "braces, which print nothing here";
    reading.report("braces-without-name", path, found, "names in braces in `do` and `because` only");
  }
}

/** What a person sees only while the engine is run has its place on the first-run sheet. */
function checkPhase(reading: RuleReading): void {
  const { confirm, firstRun, stages } = reading.file;
  const phases = Object.keys(firstRunPhases).join(", ");
  const runOnly = stages.every((stage) => stage === "run");
  if (confirm !== undefined && runOnly && firstRun === undefined)
    reading.report("phase-undeclared", ["confirm"], "no firstRun beside it", `firstRun: one of ${phases}`, {
      key: true,
    });
  if (firstRun !== undefined && !stages.includes("run"))
    reading.report(
      "phase-unused",
      ["firstRun"],
      `firstRun, but its stages are ${stages.join(", ")}`,
      "run among its stages, or no firstRun",
      { key: true },
    );
}

/** Reads what has the form of a rule file, against the fields and quantities that exist. */
export function readRule(file: RuleFile): ReadRule {
  const reading = new RuleReading(file);
  const when = file.when === undefined ? undefined : readCondition(reading, file.when, ["when"]);
  const requires = readCondition(reading, file.requires, ["requires"]);
  const limits = Object.entries(file.limits ?? {}).map(([name, limit]) => readLimit(reading, name, limit));
  if (file.confirm !== undefined && !reading.asksToConfirm)
    reading.report(
      "confirm-unused",
      ["confirm"],
      `what to look at, but no condition asks for "${CONFIRMED}"`,
      `a condition such as { fact: ${CONFIRMED}, operator: equal, value: "yes" }`,
      { key: true },
    );
  checkPhase(reading);
  refuseBraces(reading);
  const texts = [
    ...readText(reading, file.otherwise.do, ["otherwise", "do"]),
    ...readText(reading, file.because, ["because"]),
  ];
  const named = [when, requires, ...limits.flatMap((limit) => limit.cases.map((one) => one.when))]
    .flatMap(leavesOf)
    .flatMap((leaf) => [leaf.fact, ...(leaf.value.kind === "fact" ? [leaf.value.fact] : [])]);
  const facts = [...new Set([...named, ...texts])].filter((name) => limitName(name) === undefined).sort();
  return { rule: { file, when, requires, limits, facts }, issues: reading.issues };
}

/**
 * Checks a rule file against the fields and quantities that exist, and brings it into the form that is judged:
 * no negations, numbers in SI.
 * @throws RuleError with every problem.
 */
export function compileRule(file: RuleFile): CompiledRule {
  const { rule, issues } = readRule(file);
  if (issues.length > 0) throw new RuleError(file.id, issues);
  return rule;
}
