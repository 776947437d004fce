import type { RuleFile } from "@trialfit/rules";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { CompiledRule, Leaf } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import { exactly } from "../../judge/Fact.ts";
import type { Build } from "../../read/Build.ts";
import { readAims } from "../solve/readAims.ts";
import type { Aim } from "../solve/Wanted.ts";

/** Name under which an aim stands among the rules that take combinations out. */
export const aimName = (id: string) => `aims.${id}`;

function conditionsOf({ id, kind, value, allowance }: Aim, text: string): readonly Leaf[] {
  const leaf = (operator: Leaf["operator"], limit: number): Leaf => ({
    kind: "leaf",
    fact: id,
    operator,
    value: { kind: "number", value: limit, text },
  });
  return [
    ...(kind === "most" ? [] : [leaf("greaterThanInclusive", value - allowance)]),
    ...(kind === "least" ? [] : [leaf("lessThanInclusive", value + allowance)]),
  ];
}

/**
 * The aims of a build as rules that take out every combination that misses one, at nominal values and by more than what
 * is allowed. They are no rules of the catalog: nothing of them is printed but their name and title.
 * @throws InputError when an aim cannot be read
 */
export function aimRules(build: Build, catalog: Catalog): readonly CompiledRule[] {
  return readAims(build, catalog).map((aim): CompiledRule => {
    const { name } = catalog.get(aim.id)!;
    const { text } = build.aims.get(aim.id)!;
    const file = {
      id: aimName(aim.id),
      title: `${name}: ${text}, as the build aims at`,
      parts: [],
      stages: [],
      otherwise: { weight: "stop", work: "order", do: "" },
    } as unknown as RuleFile;
    return {
      file,
      when: undefined,
      requires: { kind: "all", children: conditionsOf(aim, text) },
      limits: [],
      facts: [aim.id],
    };
  });
}

/** Every fact as if each part had its nominal size: an aim is met or missed by what is ordered. */
export function atNominal(lookup: Lookup): Lookup {
  return (name) => {
    const fact = lookup(name);
    return fact.kind === "band" ? exactly(fact.nominal) : fact;
  };
}
