import { type Standing, sources, standings } from "@trialfit/rules";
import type { CompiledRule, Quantity } from "trialfit";
import { quantityList, rules } from "./catalog.ts";

type Source = (typeof sources)[string];

/** A source with everything that names it. */
export interface CitedSource {
  readonly id: string;
  readonly source: Source;
  readonly rules: readonly CompiledRule[];
  readonly quantities: readonly Quantity[];
  /** How many limits of the rules that name it stand how, the best founded first. */
  readonly standings: readonly { readonly standing: Standing; readonly count: number }[];
}

function standingsOf(cited: readonly CompiledRule[]): CitedSource["standings"] {
  const limits = cited.flatMap(({ file }) => Object.values(file.limits ?? {}));
  return (Object.keys(standings) as Standing[])
    .map((standing) => ({ standing, count: limits.filter((limit) => limit.standing === standing).length }))
    .filter(({ count }) => count > 0);
}

/** Every source, in the order of their file. */
export const citedSources: readonly CitedSource[] = Object.entries(sources).map(([id, source]) => {
  const cited = rules.filter(({ file }) => file.sources.some((one) => one.id === id));
  return {
    id,
    source,
    rules: cited,
    quantities: quantityList.filter((one) =>
      [...one.sources, ...one.examples.map(({ from }) => from)].some((ref) => ref?.id === id),
    ),
    standings: standingsOf(cited),
  };
});
