import { type BuildEdit, editBuildText } from "../../read/editBuildText.ts";
import { InputError } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import type { PartsList } from "./PartsList.ts";

/** A part by the key of its kind and its id. */
export interface PartNamed {
  readonly part: string;
  readonly id: string;
}

function editsFor(
  { part, id }: PartNamed,
  lists: readonly PartsList[],
  data: unknown,
  file: string,
): readonly BuildEdit[] {
  const own = lists.filter((list) => list.part.key === part);
  for (const list of own) {
    const listed = list.parts.find((one) => one.id === id);
    if (listed === undefined) continue;
    const old = (data as Readonly<Record<string, object | undefined>>)[part] ?? {};
    const left = Object.keys(old).filter(
      (name) => !Object.hasOwn(listed.entries, name) && !list.keep.includes(`${part}.${name}`),
    );
    return [
      ...left.map((name) => ({ path: `${part}.${name}`, value: undefined })),
      ...Object.entries(listed.entries).map(([name, value]) => ({ path: `${part}.${name}`, value })),
    ];
  }
  throw new InputError([
    {
      file,
      line: undefined,
      column: undefined,
      field: part,
      found: `the id "${id}"`,
      expected: "a part of the lists",
    },
  ]);
}

/**
 * The text of a build file with parts from lists in place of its own: what the build says of the old parts goes, but for
 * what their lists keep.
 * @param text a build file, YAML or JSON
 * @param unseen rules whose confirmation goes, since a person confirmed it of an old part
 * @throws InputError when the text cannot be read, or a part is in no list
 */
export function withParts(
  text: string,
  chosen: readonly PartNamed[],
  lists: readonly PartsList[],
  { file = "build", unseen = [] }: { readonly file?: string; readonly unseen?: readonly string[] } = {},
): string {
  const { data } = parseSource(text, file);
  const edits = chosen.flatMap((one) => editsFor(one, lists, data, file));
  const confirmed = unseen.map((rule) => ({ path: `confirmations.${rule}`, value: undefined }));
  return editBuildText(text, [...edits, ...confirmed], file);
}
