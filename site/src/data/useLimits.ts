import { uses } from "@trialfit/rules";
import { type CompiledRule, decideLimit, type Fact } from "trialfit";

/** One limit with its value for each use, in the order of the uses. */
export interface UseLimit {
  readonly file: CompiledRule["file"];
  readonly limit: string;
  readonly values: readonly string[];
}

/** What is taken for granted where a limit follows more than the use. */
const PLAIN: Readonly<Record<string, string>> = { "induction.kind": "naturally-aspirated" };

const nameOf = (fact: string) => fact.replace(/^limit\./, "");

/** What is known of an engine when only its use is. */
function factOf(name: string, use: string): Fact {
  const word = name === "use" ? use : PLAIN[name];
  return word === undefined ? { kind: "missing", missing: [name] } : { kind: "word", word };
}

/** Every limit that differs with the use, with its value for each; "…" where more decides. */
export function useLimits(rules: readonly CompiledRule[]): readonly UseLimit[] {
  return rules.flatMap(({ file, limits }) =>
    limits.flatMap((limit): UseLimit[] => {
      const values = Object.keys(uses).map((use) => {
        const band = decideLimit(limit, (name) => factOf(name, use));
        if (band.low < band.high) return "…";
        const written = limit.cases.find(({ value }) => value === band.nominal)?.text;
        return written ?? file.limits![nameOf(limit.fact)]!.value;
      });
      return new Set(values).size > 1 ? [{ file, limit: nameOf(limit.fact), values }] : [];
    }),
  );
}
