import { type Plugin, parseAst } from "vite";
import { isNode, type Node } from "./apart/Node.ts";

/** Where rules and quantities are declared with their examples. */
const DECLARED = /\/core\/dist\/derive\/|\/rules\/dist\/generated\/catalog\.js$/;

interface Span {
  readonly start: number;
  readonly end: number;
}

/** Every property of that name in what is written out as an object. */
function spansOf(node: Node, name: string): readonly Span[] {
  const isWanted = ({ type, key, computed }: Node) =>
    type === "Property" &&
    computed !== true &&
    isNode(key) &&
    (key.type === "Identifier" ? key.name : key.value) === name;
  const own = node.type === "ObjectExpression" ? (node.properties as readonly Node[]).filter(isWanted) : [];
  const within = Object.values(node)
    .flat()
    .filter(isNode)
    .filter((one) => !own.includes(one));
  return [...own, ...within.flatMap((one) => spansOf(one, name))];
}

/** A script without the properties of a name; whoever reads one all the same gets nothing, and fails on it. */
export function withoutProperty(code: string, name: string): string {
  let [rest, at] = ["", 0];
  for (const { start, end } of [...spansOf(parseAst(code) as unknown as Node, name)].sort(
    (a, b) => a.start - b.start,
  )) {
    rest += code.slice(at, start);
    at = end + /^(\s*,)?/.exec(code.slice(end))![0].length;
  }
  return rest + code.slice(at);
}

/**
 * Leaves the examples of rules and quantities out of workers: the tests and the pages of the catalog read them, a
 * worker that judges a build does not.
 * @throws Error at the end of a build that had none to leave out
 */
export function withoutExamples(): Plugin {
  let left = 0;
  return {
    name: "without-examples",
    transform(code, id) {
      if (!DECLARED.test(id) || !code.includes("examples")) return undefined;
      const rest = withoutProperty(code, "examples");
      left += code.length - rest.length;
      return { code: rest, map: null };
    },
    generateBundle() {
      if (left === 0) throw new Error("no examples were left out: nothing is declared where it was");
    },
  };
}
