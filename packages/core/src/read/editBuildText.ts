import { type Document, isCollection, isMap, isNode, type Node, parseDocument, Scalar, visit } from "yaml";
import { parseSource } from "./parseSource.ts";

/** One entry of a build file to write anew, or to take out. */
export interface BuildEdit {
  /** Where it stands: `block.bore`, or `confirmations.<rule>`. */
  readonly path: string;
  /** What the file shall say there: text, a list or an object of such. Undefined takes the entry out. */
  readonly value: unknown;
}

/** Words that a reader of plain YAML would take for something other than text. */
const TAKEN_FOR_OTHERS = /^(?:[-+]?[.\d][\d_.]*(?:[eE][-+]?\d+)?|true|false|null|~|0[xo][\da-f]+)$/i;

/** Quotes what other readers of YAML would turn into a number, a truth value or nothing. */
function quoteNumbers(document: Document, node: unknown): Node {
  const made = document.createNode(node, { flow: true });
  visit(made, {
    Scalar: (key, scalar) => {
      if (key !== "key" && typeof scalar.value === "string" && TAKEN_FOR_OTHERS.test(scalar.value))
        scalar.type = Scalar.QUOTE_DOUBLE;
    },
  });
  return made;
}

function takeOut(document: Document, path: readonly string[]): void {
  document.deleteIn(path);
  const above = path.slice(0, -1);
  const left = above.length === 0 ? undefined : document.getIn(above);
  if (isMap(left) && left.items.length === 0) takeOut(document, above);
}

function write(document: Document, path: readonly string[], value: unknown): void {
  // A part that is there but empty (`oil:`) is a word without text, under which nothing can be set.
  for (let depth = 1; depth < path.length; depth += 1) {
    const above = path.slice(0, depth);
    if (!isCollection(document.getIn(above))) document.setIn(above, document.createNode({}));
  }
  const before = document.getIn(path, true);
  const made = quoteNumbers(document, value);
  if (isNode(before) && before.comment) made.comment = before.comment;
  document.setIn(path, made);
}

/** JSON stays JSON: its numbers are kept as they are written. */
function editJson(text: string, edits: readonly BuildEdit[]): string {
  const data = JSON.parse(text) as Record<string, unknown>;
  for (const { path, value } of edits) {
    const steps = path.split(".");
    const last = steps.pop()!;
    let at = data;
    for (const step of steps) {
      at[step] ??= {};
      at = at[step] as Record<string, unknown>;
    }
    if (value === undefined) delete at[last];
    else at[last] = value;
  }
  return `${JSON.stringify(data, null, 2)}\n`;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/**
 * Writes entries into the text of a build file and leaves the rest as it is, comments too; only long lines may be
 * broken at other places, and a comment may move to the next line. What is written is not checked: `readBuildText` does that.
 * @param text a build file, YAML or JSON
 * @throws InputError when the text is neither, or is refused for what it holds (see `parseSource`)
 */
export function editBuildText(text: string, edits: readonly BuildEdit[], file = "build"): string {
  parseSource(text, file);
  for (const { path } of edits) {
    if (!/^[A-Za-z][\w-]*(\.[a-z][\w-]*)*$/.test(path) || path.includes("__proto__"))
      throw new RangeError(`not the path of an entry: "${path}"`);
  }
  if (edits.length === 0) return text;
  if (isJson(text)) return editJson(text, edits);
  const document = parseDocument(text, { schema: "failsafe" });
  for (const { path, value } of edits) {
    const steps = path.split(".");
    if (value === undefined) {
      if (document.hasIn(steps)) takeOut(document, steps);
    } else write(document, steps, value);
  }
  return document.toString({ lineWidth: 110 });
}
