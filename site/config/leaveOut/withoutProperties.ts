import { parseAst } from "vite";
import { isNode, type Node } from "../apart/Node.ts";

interface Cut {
  readonly start: number;
  readonly end: number;
}

function nameOf({ type, key, computed }: Node): unknown {
  if (type !== "Property" || computed === true || !isNode(key)) return undefined;
  return key.type === "Identifier" ? key.name : key.value;
}

/** Where a property of that name stands in something that is written out as an object, with the comma after it. */
function cutOf(property: Node, names: readonly string[], code: string): Cut | undefined {
  const name = nameOf(property);
  if (typeof name !== "string" || !names.includes(name)) return undefined;
  const { start, end } = property;
  return { start, end: end + /^(\s*,)?/.exec(code.slice(end))![0].length };
}

function cutsIn(node: Node, names: readonly string[], code: string): readonly Cut[] {
  const cuts: Cut[] = [];
  for (const child of Object.values(node).flat()) {
    if (!isNode(child)) continue;
    const cut = node.type === "ObjectExpression" ? cutOf(child, names, code) : undefined;
    if (cut === undefined) cuts.push(...cutsIn(child, names, code));
    else cuts.push(cut);
  }
  return cuts;
}

/** A script without some properties of its objects; whoever reads one that is gone all the same fails on it. */
export function withoutProperties(code: string, names: readonly string[]): string {
  const cuts = cutsIn(parseAst(code) as unknown as Node, names, code);
  let [rest, at] = ["", 0];
  for (const { start, end } of [...cuts].sort((a, b) => a.start - b.start)) {
    rest += code.slice(at, start);
    at = end;
  }
  return rest + code.slice(at);
}
