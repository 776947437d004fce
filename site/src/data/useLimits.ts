import { type Condition, type RuleFile, uses } from "@trialfit/rules";

/** One limit with its value for each use, in the order of the uses. */
export interface UseLimit {
  readonly file: RuleFile;
  readonly limit: string;
  readonly values: readonly string[];
}

/** What is taken for granted where a limit follows more than the use. */
const PLAIN: Readonly<Record<string, string>> = { "induction.kind": "naturally-aspirated" };

/** Whether a condition holds for a use; undefined where it asks for more than is known here. */
function holds(condition: Condition, known: Readonly<Record<string, string>>): boolean | undefined {
  if ("not" in condition) {
    const inner = holds(condition.not, known);
    return inner === undefined ? undefined : !inner;
  }
  if ("all" in condition || "any" in condition) {
    const [children, ruling] = "all" in condition ? [condition.all, false] : [condition.any, true];
    const answers = children.map((child) => holds(child, known));
    return answers.includes(ruling) ? ruling : answers.includes(undefined) ? undefined : !ruling;
  }
  const word = known[condition.fact];
  if (word === undefined || (typeof condition.value === "object" && !Array.isArray(condition.value)))
    return undefined;
  const among = [condition.value].flat().includes(word);
  return condition.operator === "equal" || condition.operator === "in" ? among : !among;
}

function asksForUse(condition: Condition): boolean {
  return JSON.stringify(condition).includes('"fact":"use"');
}

/** Every limit that differs with the use, with its value for each; "…" where more decides. */
export function useLimits(files: readonly RuleFile[]): readonly UseLimit[] {
  return files.flatMap((file) =>
    Object.entries(file.limits ?? {}).flatMap(([limit, { value, cases = [] }]): UseLimit[] => {
      if (!cases.some((one) => asksForUse(one.when))) return [];
      const values = Object.keys(uses).map((use) => {
        for (const one of cases) {
          const answer = holds(one.when, { ...PLAIN, use });
          if (answer === undefined) return "…";
          if (answer) return one.value;
        }
        return value;
      });
      return new Set(values).size > 1 ? [{ file, limit, values }] : [];
    }),
  );
}
