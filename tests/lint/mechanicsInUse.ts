import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync } from "vite";
import { type Node, namesIn } from "../../packages/mechanics/src/syntaxNames.test-support.ts";

/** A text of TypeScript by its path. */
export type Sources = ReadonlyMap<string, string>;

interface Statement extends Node {
  readonly source?: { readonly value: string } | null;
  readonly specifiers?: readonly { readonly local: Node; readonly imported?: Node }[];
  readonly declaration?: Statement | null;
  readonly declarations?: readonly { readonly id: Node }[];
}

/** Declarations at the top of a file with the names that each reads, and what the file takes from others. */
interface Module {
  readonly declared: ReadonlyMap<string, ReadonlySet<string>>;
  readonly imported: ReadonlyMap<string, { readonly from: string; readonly name: string }>;
}

function readModule(text: string): Module {
  const { program, errors } = parseSync("file.ts", text);
  if (errors.length > 0) throw new Error(errors[0]!.message);
  const declared = new Map<string, ReadonlySet<string>>();
  const imported = new Map<string, { from: string; name: string }>();
  for (const statement of program.body as unknown as readonly Statement[]) {
    if (statement.type === "ImportDeclaration")
      for (const { local, imported: original } of statement.specifiers!)
        if (original !== undefined)
          imported.set(local.name!, { from: statement.source!.value, name: original.name! });
    const node = statement.declaration ?? statement;
    const ids = node.declarations?.map(({ id }) => id) ?? (node.id === undefined ? [] : [node.id as Node]);
    for (const id of ids) if (id?.name !== undefined) declared.set(id.name, namesIn(node));
  }
  return { declared, imported };
}

/** Every file of a folder that is no test, by its whole path. */
export function sourcesUnder(folder: string): Sources {
  const root = fileURLToPath(new URL(`../../${folder}`, import.meta.url));
  return new Map(
    readdirSync(root, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && !file.includes(".test"))
      .map((file) => [join(root, file), readFileSync(join(root, file), "utf8")]),
  );
}

/**
 * Names of a library that its users reach: what they import from it, and what that reads in turn.
 * @param library its files; names that it exports are told apart by name alone
 * @param users files that import from it
 * @param name under which they do
 */
export function reachedNames(library: Sources, users: Sources, name: string): ReadonlySet<string> {
  const modules = new Map([...library].map(([path, text]) => [path, readModule(text)]));
  const homes = new Map(
    [...modules].flatMap(([path, { declared }]) => [...declared.keys()].map((id) => [id, path])),
  );
  const reached = new Set<string>();
  const names = new Set<string>();
  const visit = (path: string, id: string): void => {
    const module = modules.get(path);
    const reads = module?.declared.get(id);
    if (reads === undefined || reached.has(`${path}#${id}`)) return;
    reached.add(`${path}#${id}`);
    names.add(id);
    for (const read of reads) {
      const elsewhere = module!.imported.get(read);
      if (elsewhere === undefined) visit(path, read);
      else visit(join(dirname(path), elsewhere.from), elsewhere.name);
    }
  };
  for (const text of users.values())
    for (const { from, name: id } of readModule(text).imported.values())
      if (from === name && homes.has(id)) visit(homes.get(id)!, id);
  return names;
}
