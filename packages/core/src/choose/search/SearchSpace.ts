import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Build } from "../../read/Build.ts";
import { parts } from "../../read/buildSchema.ts";
import { confirmationPath } from "../../read/confirmations.ts";
import type { PartSpec } from "../../read/FieldSpec.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import type { ListedPart, PartsList } from "../lists/PartsList.ts";

/** A part that can be chosen, with all that it puts into the build: its own fields and those that its list keeps. */
export interface Candidate extends ListedPart {
  readonly file: string;
}

/** Parts of one kind, of which one is chosen: in the order of their ids. */
export interface CandidateKind {
  readonly part: PartSpec;
  readonly candidates: readonly Candidate[];
}

/** What is searched: what stands, and what can be chosen. */
export interface SearchSpace {
  /** The build without the parts that are to be chosen. */
  readonly fixed: Build;
  /** In the order of the build file. */
  readonly kinds: readonly CandidateKind[];
  /** Three letters, where any list has prices. */
  readonly currency: string | undefined;
  /** Rules whose confirmation was left out: what a person saw on an old part was not seen on a new one. */
  readonly unseen: readonly string[];
}

export interface SpaceOptions {
  /** Take only parts of which there are enough for one engine in stock. */
  readonly inStock?: boolean;
}

const byId = (a: Candidate, b: Candidate) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

function problemIn(file: string, line: number | undefined, found: string, expected: string): Problem {
  return { file, line, column: line === undefined ? undefined : 1, field: "", found, expected };
}

/** The parts of all lists of one kind. @throws InputError when two have one id, or none is left */
function candidatesOf(
  lists: readonly PartsList[],
  build: Build,
  { inStock }: SpaceOptions,
): readonly Candidate[] {
  const all = lists.flatMap((list) => {
    const kept = list.keep.flatMap((path) =>
      [path, `${path}.place`].flatMap((one) => {
        const value = build.values.get(one);
        return value === undefined ? [] : [[one, value] as const];
      }),
    );
    return list.parts.map((part): Candidate => {
      const values = new Map<string, FieldValue>(kept);
      for (const [path, value] of part.values) {
        values.set(path, value);
        if (!part.values.has(`${path}.place`)) values.delete(`${path}.place`);
      }
      return { ...part, values, file: list.file };
    });
  });
  if (inStock === true && all.every(({ stock }) => stock === undefined))
    throw new InputError([
      problemIn(
        all[0]?.file ?? lists[0]!.file,
        undefined,
        "no word of what is in stock",
        "a column stock with for how many engines there are parts; or search without that demand",
      ),
    ]);
  const offered = inStock === true ? all.filter(({ stock = 0 }) => stock >= 1) : all;
  if (offered.length === 0)
    throw new InputError([
      problemIn(lists[0]!.file, undefined, "no part in stock", "at least one: search without that demand"),
    ]);
  const sorted = [...offered].sort(byId);
  const twice = sorted.find((one, index) => sorted[index + 1]?.id === one.id);
  if (twice !== undefined)
    throw new InputError([
      problemIn(twice.file, twice.line, `the id "${twice.id}" in two lists of one kind`, "each id once"),
    ]);
  return sorted;
}

function currencyOf(lists: readonly PartsList[]): string | undefined {
  const [first, ...others] = lists.filter(({ currency }) => currency !== undefined);
  const other = others.find(({ currency }) => currency !== first?.currency);
  if (other !== undefined)
    throw new InputError([
      problemIn(
        other.file,
        undefined,
        `prices in ${other.currency}`,
        `prices in ${first!.currency}, as in ${first!.file}: they are added`,
      ),
    ]);
  return first?.currency;
}

/**
 * What can be chosen for a build. A part of the build whose kind has a list is left out of it whole, but for the fields
 * that the list keeps; and so is what a person confirmed under rules about such a part.
 * @param rules that are judged
 * @throws InputError when lists do not go together, or a dimension of the build is still to be found
 */
export function spaceOf(
  build: Build,
  lists: readonly PartsList[],
  rules: readonly CompiledRule[],
  options: SpaceOptions = {},
): SearchSpace {
  const file = build.file ?? "build";
  if (build.wanted.size > 0)
    throw new InputError(
      [...build.wanted.keys()].map((field) => ({
        ...problemIn(
          file,
          undefined,
          "a dimension that is to be found",
          "its size: `trialfit solve` finds it",
        ),
        field,
      })),
    );
  if (lists.length === 0)
    throw new InputError([
      problemIn(file, undefined, "no parts lists", "at least one list of parts to choose from"),
    ]);
  const kinds = parts.flatMap(({ spec }): readonly CandidateKind[] => {
    const own = lists.filter(({ part }) => part.key === spec.key);
    return own.length === 0 ? [] : [{ part: spec, candidates: candidatesOf(own, build, options) }];
  });
  const chosen = new Set(kinds.map(({ part }) => part.key));
  const ids = new Set(kinds.map(({ part }) => part.id));
  const unseen = rules
    .filter((rule) => build.confirmations.has(rule.file.id) && rule.file.parts.some((part) => ids.has(part)))
    .map((rule) => rule.file.id);
  const dropped = new Set(unseen.map(confirmationPath));
  const stays = (path: string) => !chosen.has(path.split(".")[0]!) && !dropped.has(path);
  return {
    fixed: {
      ...build,
      values: new Map([...build.values].filter(([path]) => stays(path))),
      confirmations: new Map([...build.confirmations].filter(([rule]) => !unseen.includes(rule))),
    },
    kinds,
    currency: currencyOf(lists),
    unseen,
  };
}
