import type { PartsList } from "trialfit";
import { relativeMargin } from "../../../packages/core/src/choose/search/relativeMargin.ts";
import { readAims } from "../../../packages/core/src/choose/solve/readAims.ts";
import { missOf } from "../../../packages/core/src/choose/solve/Wanted.ts";
import { deriveAll } from "../../../packages/core/src/derive/deriveAll.ts";
import { quantities } from "../../../packages/core/src/derive/generated/quantities.ts";
import { withDefaults } from "../../../packages/core/src/derive/withDefaults.ts";
import { compileRules } from "../../../packages/core/src/judge/compileRules.ts";
import { withLimits } from "../../../packages/core/src/judge/decideRule.ts";
import { judgeBuild } from "../../../packages/core/src/judge/judgeBuild.ts";
import { lookupOf } from "../../../packages/core/src/judge/lookupOf.ts";
import type { VerdictWord } from "../../../packages/core/src/judge/Verdict.ts";
import { confirmationPath } from "../../../packages/core/src/read/confirmations.ts";
import type { RandomSearch } from "./RandomSearch.ts";

/** One combination, evaluated whole. */
export interface Combination {
  /** Id of the chosen part by the key of its kind. */
  readonly ids: Readonly<Record<string, string>>;
  readonly words: ReadonlyMap<string, VerdictWord>;
  /** Rules of which nothing is missing but what a person has to look at. */
  readonly toConfirm: ReadonlySet<string>;
  /** By rule. */
  readonly margins: ReadonlyMap<string, number>;
  /** Of the aims of the build at nominal values: whether any is missed, and whether all can be worked out. */
  readonly aimMissed: boolean;
  readonly aimsKnown: boolean;
  /** In ten-thousandths. */
  readonly cost: number;
  readonly mass: number;
  readonly time: number;
}

function combinationsOf(lists: readonly PartsList[]): readonly (readonly PartsList["parts"][number][])[] {
  return lists.reduce<readonly (readonly PartsList["parts"][number][])[]>(
    (all, list) => all.flatMap((chosen) => list.parts.map((part) => [...chosen, part])),
    [[]],
  );
}

/**
 * Evaluates every combination of a small search as a whole build, through json-rules-engine and with nothing of the
 * search: no memory, no order, no cut. Margins are left out where rules are judged at places.
 */
export async function exhaust(
  { fixed, candidates, rules }: RandomSearch,
  positions: boolean,
): Promise<readonly Combination[]> {
  const compiled = compileRules(rules);
  const keys = candidates.map(({ part }) => part.key);
  const all: Combination[] = [];
  for (const chosen of combinationsOf(candidates)) {
    const values = new Map([...fixed.values].filter(([path]) => !keys.includes(path.split(".")[0]!)));
    for (const [index, part] of chosen.entries()) {
      for (const path of candidates[index]!.keep) {
        const kept = fixed.values.get(path);
        if (kept !== undefined) values.set(path, kept);
      }
      for (const [path, value] of part.values) values.set(path, value);
    }
    const whole = withDefaults({ ...fixed, values });
    const { judged } = await judgeBuild(whole, compiled, quantities, []);
    const margins = new Map<string, number>();
    for (const { rule, verdict } of positions ? [] : judged) {
      const wanted = rule.facts.filter((fact) => quantities.has(fact));
      const lookup = lookupOf(whole, deriveAll(whole, quantities, wanted));
      const margin =
        verdict.verdict === "not-applicable"
          ? Infinity
          : relativeMargin(rule.requires, withLimits(rule, lookup));
      margins.set(rule.file.id, margin);
    }
    const aims = readAims(fixed, quantities);
    const reached = deriveAll(
      whole,
      quantities,
      aims.map(({ id }) => id),
    );
    all.push({
      aimMissed: aims.some((aim) => {
        const value = reached.get(aim.id);
        return value?.state === "value" && Math.abs(missOf(aim, value.nominal)) > 1;
      }),
      aimsKnown: [...reached.values()].every(({ state }) => state === "value"),
      ids: Object.fromEntries(chosen.map(({ id }, index) => [keys[index]!, id])),
      words: new Map(judged.map(({ rule, verdict }) => [rule.file.id, verdict.verdict])),
      toConfirm: new Set(
        judged
          .filter(
            ({ rule, verdict: { verdict, missing, reasons } }) =>
              verdict === "unknown" &&
              reasons.length === 0 &&
              missing.every((path) => path === confirmationPath(rule.file.id)),
          )
          .map(({ rule }) => rule.file.id),
      ),
      margins,
      cost: chosen.reduce((sum, { price }) => sum + price!, 0),
      mass: chosen.reduce((sum, { totalMass }) => sum + Math.round(totalMass! * 1e9), 0) / 1e9,
      time: Math.max(...chosen.map(({ leadTime }) => leadTime!)),
    });
  }
  return all;
}
