import { movedAlong, unmoved } from "../derive/Moved.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import { unlessImpossible } from "../derive/unlessImpossible.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { Lookup } from "./decide.ts";
import { decideRule } from "./decideRule.ts";
import { exactly } from "./Fact.ts";
import type { Judged } from "./Judged.ts";
import { lookupOf } from "./lookupOf.ts";
import type { Measured, SettledWord } from "./measuring.ts";

type Values = ReadonlyMap<string, FieldValue>;
type Corner = ReadonlyMap<string, number>;

/** Engines within the tolerances that lie farthest off by the effect of each dimension alone: two for each compared value. */
function cornersOf({ verdict, derivations }: Judged, values: Values): readonly Corner[] {
  const compared = verdict.comparisons
    .filter(({ state }) => state === "possible")
    .flatMap(({ fact, againstName }) => (againstName === undefined ? [fact] : [fact, againstName]));
  return compared.flatMap((name) => {
    const derivation = derivations.get(name);
    const effects =
      derivation?.state === "value" ? derivation.spread : [{ path: name, atLow: -1, atHigh: 1 }];
    return [-1, 1].map((sign) => {
      const corner = new Map<string, number>();
      for (const { path, atLow, atHigh } of effects) {
        const value = values.get(path);
        if (value?.kind === "dimension" && value.low < value.high)
          corner.set(path, sign * atHigh >= sign * atLow ? value.high : value.low);
      }
      return corner;
    });
  });
}

/** Every fact of one engine within the tolerances. */
function engineAt(corner: Corner, { derivations, values, chain }: Judged, catalog: Catalog): Lookup {
  const moved = movedAlong([...corner.keys()])([...corner.values()]);
  const lookup = lookupOf(values, derivations);
  return (name) => {
    if (derivations.get(name)?.state === "value")
      return exactly(chain.at(name, catalog.get(name)?.nominalOnly === true ? unmoved : moved));
    const fact = lookup(name);
    return fact.kind === "band" ? exactly(corner.get(name) ?? fact.nominal) : fact;
  };
}

/**
 * Whether an engine within the tolerances of a build whose dimensions were measured is known of which a rule does not
 * say a word: then it cannot surely say it of all of them. A few engines are looked at, so that a search over all of
 * them is spared where it would find the same.
 */
export function isRefuted(
  { values }: Measured,
  judged: Judged,
  catalog: Catalog,
  word: SettledWord,
): boolean {
  return cornersOf(judged, values).some((corner) => {
    const said = unlessImpossible(() => decideRule(judged.rule, engineAt(corner, judged, catalog)));
    return said !== undefined && said !== word;
  });
}
