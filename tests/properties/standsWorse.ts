import type { Report, ReportVerdict, VerdictWord } from "trialfit";

/** Beyond what is called slight, so that what lies at the border is not disputed. */
const GROWTH = 0.02;
const OF_SIZE = 0.002;

/** Whether what a rule says after a change is a break: what held no longer does, or what did not fail does. */
export function isBreak(before: VerdictWord, after: VerdictWord): boolean {
  return before === "holds"
    ? after !== "holds" && after !== "not-applicable"
    : after === "fails" && before !== "fails";
}

/** Rules that a change breaks. */
export function brokenIn(before: Report, after: Report): readonly string[] {
  const words = new Map(after.verdicts.map(({ rule, verdict }) => [rule, verdict]));
  return before.verdicts
    .filter(({ rule, verdict }) => isBreak(verdict, words.get(rule)!))
    .map(({ rule }) => rule);
}

/** What the comparisons of a rule lack, by fact; undefined where they cannot be summed: alternatives, places, words. */
function lacks({ comparisons, places }: ReportVerdict): ReadonlyMap<string, number> | undefined {
  const required = comparisons.filter((one) => one.in === "requires");
  if (places !== undefined || required.some((one) => one.alternative || one.margin === undefined))
    return undefined;
  const lacking = new Map<string, number>();
  for (const { fact, margin } of required)
    lacking.set(fact, (lacking.get(fact) ?? 0) + Math.max(0, -margin!.low));
  return lacking;
}

function sizeOf({ comparisons }: ReportVerdict, fact: string): number {
  const sizes = comparisons.flatMap((one) =>
    one.in === "requires" && one.fact === fact
      ? [one.value, one.against].flatMap((side) =>
          typeof side === "object" && "nominal" in side ? [Math.abs(side.nominal)] : [],
        )
      : [],
  );
  return Math.max(0, ...sizes);
}

/**
 * How a rule that did not hold stands after a change in which it says the same: `plainly` or `somewhat` further from
 * holding, or not at all.
 * @returns undefined where that cannot be seen in the two reports
 */
export function furtherIn(
  before: ReportVerdict,
  after: ReportVerdict,
): "plainly" | "somewhat" | "no" | undefined {
  const [was, is] = [lacks(before), lacks(after)];
  if (was === undefined || is === undefined) return undefined;
  const grown = [...is].map(([fact, lacking]) => {
    const more = lacking - (was.get(fact) ?? 0);
    if (more <= 0) return "no";
    const plain = more > Math.max(GROWTH * (was.get(fact) ?? 0), OF_SIZE * sizeOf(after, fact));
    return plain ? "plainly" : "somewhat";
  });
  return grown.includes("plainly") ? "plainly" : grown.includes("somewhat") ? "somewhat" : "no";
}
