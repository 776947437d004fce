import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
  visit,
} from "yaml";
import { FORBIDDEN_KEYS, MAX_DEPTH } from "./dataLimits.ts";
import { InputError, type Problem } from "./Problem.ts";

/** Longest text that is read. Build and rule files are a few kilobytes; this bounds time and memory. */
export const MAX_SOURCE_LENGTH = 512 * 1024;

const MAX_ALIASES = 32;

/** A parsed text whose every node can be found again by its path. */
export interface Source {
  readonly file: string;
  readonly data: unknown;
  /** Line and column (from 1) of the value at a path, or of the key itself. */
  locate(path: readonly PropertyKey[], key?: boolean): { line: number; column: number } | undefined;
}

function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  for (const sign of text) {
    if (sign === "[" || sign === "{") deepest = Math.max(deepest, ++depth);
    else if (sign === "]" || sign === "}") depth = Math.max(0, depth - 1);
  }
  return deepest;
}

function structureProblems(
  document: Document.Parsed,
  place: (node: Node) => Pick<Problem, "line" | "column">,
  file: string,
) {
  const problems: Problem[] = [];
  let aliases = 0;
  visit(document, {
    Alias: (_, node) => {
      aliases += 1;
      if (aliases === MAX_ALIASES + 1) {
        problems.push({
          file,
          ...place(node),
          field: "",
          found: `more than ${MAX_ALIASES} aliases`,
          expected: "values written out",
        });
      }
    },
    Pair: (_, pair) => {
      const key = pair.key;
      if (isScalar(key) && FORBIDDEN_KEYS.has(String(key.value))) {
        problems.push({
          file,
          ...place(key),
          field: String(key.value),
          found: `the key "${key.value}"`,
          expected: "the name of a field",
        });
      } else if (!isScalar(key) && isNode(key)) {
        problems.push({
          file,
          ...place(key),
          field: "",
          found: "a key that is not a word",
          expected: "the name of a field",
        });
      }
    },
  });
  return problems;
}

/**
 * Parses YAML or JSON (which is YAML) without interpreting any value: every scalar stays the text that was
 * written, so `1.10` stays `1.10`. Duplicate keys, alias bombs, tabs and `__proto__` keys are refused.
 * @throws InputError with every problem found.
 */
export function parseSource(text: string, file: string): Source {
  const whole = (found: string, expected: string) =>
    new InputError([{ file, line: undefined, column: undefined, field: "", found, expected }]);
  if (text.length > MAX_SOURCE_LENGTH) {
    throw whole(`${text.length} characters`, `a text of at most ${MAX_SOURCE_LENGTH} characters`);
  }
  if (depthOf(text) > MAX_DEPTH) throw whole("deeply nested brackets", `at most ${MAX_DEPTH} levels`);
  const tab = /^[ ]*\t/m.exec(text);
  if (tab !== null && !/^\s*[{[]/.test(text)) {
    const line = text.slice(0, tab.index).split("\n").length;
    throw new InputError([
      {
        file,
        line,
        column: tab[0].length,
        field: "",
        found: "a tab at the head of a line",
        expected: "spaces: YAML does not indent with tabs",
      },
    ]);
  }
  const lines = new LineCounter();
  const document = parseDocument(text, {
    schema: "failsafe",
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: true,
  });
  const at = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const place = (node: Node) => (node.range ? at(node.range[0]) : { line: undefined, column: undefined });
  if (document.errors.length > 0) {
    throw new InputError(
      // One slip breaks much of what follows it: the first places are the telling ones.
      document.errors.slice(0, 3).map((error) => ({
        file,
        ...at(error.pos[0]),
        field: "",
        found: `something that is not YAML or JSON (${error.message})`,
        expected: "one `field: value` a line, indented with spaces, every field once",
      })),
    );
  }
  const problems = structureProblems(document, place, file);
  if (problems.length > 0) throw new InputError(problems);
  return {
    file,
    data: document.toJS({ maxAliasCount: MAX_ALIASES }),
    locate: (path, key = false) => {
      let node: unknown = document.contents;
      let found: Node | undefined = isNode(node) ? node : undefined;
      for (const [index, step] of path.entries()) {
        if (isAlias(node)) node = node.resolve(document);
        if (isMap(node)) {
          const pair = node.items.find(
            (item) => isScalar(item.key) && String(item.key.value) === String(step),
          );
          if (!isPair(pair)) break;
          node = key && index === path.length - 1 ? pair.key : (pair.value ?? pair.key);
        } else if (isNode(node) && "items" in node) {
          node = (node as { items: unknown[] }).items[Number(step)];
        } else break;
        if (isNode(node)) found = node;
      }
      return found?.range ? at(found.range[0]) : undefined;
    },
  };
}
