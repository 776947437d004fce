import { parseAst } from "vite";
import { isNode, type Node } from "../apart/Node.ts";

/** Names of properties that go, and of those that stay as an empty text, since their being there is asked for. */
export interface LeftOut {
  readonly gone: readonly string[];
  readonly emptied: readonly string[];
}

interface Cut {
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

function nameOf({ type, key, computed }: Node): unknown {
  if (type !== "Property" || computed === true || !isNode(key)) return undefined;
  return key.type === "Identifier" ? key.name : key.value;
}

/** What becomes of a property of something that is written out as an object; undefined where it stays. */
function cutOf(property: Node, { gone, emptied }: LeftOut, code: string): Cut | undefined {
  const name = nameOf(property);
  if (typeof name !== "string") return undefined;
  const { start, end } = property;
  if (gone.includes(name)) return { start, end: end + /^(\s*,)?/.exec(code.slice(end))![0].length, put: "" };
  return emptied.includes(name) ? { start, end, put: `${JSON.stringify(name)}: ""` } : undefined;
}

function cutsIn(node: Node, leftOut: LeftOut, code: string): readonly Cut[] {
  const cuts: Cut[] = [];
  for (const child of Object.values(node).flat()) {
    if (!isNode(child)) continue;
    const cut = node.type === "ObjectExpression" ? cutOf(child, leftOut, code) : undefined;
    if (cut === undefined) cuts.push(...cutsIn(child, leftOut, code));
    else cuts.push(cut);
  }
  return cuts;
}

/** A script without some properties of its objects; whoever reads one that is gone all the same fails on it. */
export function withoutProperties(code: string, leftOut: LeftOut): string {
  const cuts = cutsIn(parseAst(code) as unknown as Node, leftOut, code);
  let [rest, at] = ["", 0];
  for (const { start, end, put } of [...cuts].sort((a, b) => a.start - b.start)) {
    rest += code.slice(at, start) + put;
    at = end;
  }
  return rest + code.slice(at);
}
