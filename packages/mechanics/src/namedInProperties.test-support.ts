import { type ESTree, parseSync } from "vite";
import { isNode, type Node, namesIn, walk } from "./syntaxNames.test-support.ts";

const calleeOf = (node: Node): Node | undefined => (isNode(node.callee) ? node.callee : undefined);
const memberOf = (node: Node | undefined): unknown =>
  node?.type === "MemberExpression" && isNode(node.property) ? node.property.name : undefined;

/** A property test: `test.prop([...])("...", ...)`, `fc.assert(...)` or `solvesBack(...)`. */
function isPropertyTest(node: Node): boolean {
  if (node.type !== "CallExpression") return false;
  const callee = calleeOf(node);
  if (callee?.type === "CallExpression") return memberOf(calleeOf(callee)) === "prop";
  return memberOf(callee) === "assert" || callee?.name === "solvesBack";
}

/** What the property tests of one file name. */
export interface NamedInProperties {
  readonly properties: number;
  /** imported names that a property test reads, itself or through what the file declares */
  readonly names: ReadonlySet<string>;
  /** functions whose inputs are found back */
  readonly solved: ReadonlySet<string>;
}

/**
 * Reads a test file.
 * @param text of the file
 * @returns its property tests and what they name
 * @throws Error when the text is not TypeScript
 */
export function namedInProperties(text: string): NamedInProperties {
  const { program, errors } = parseSync("file.test.ts", text);
  if (errors.length > 0) throw new Error(errors[0]!.message);
  const imported = new Map<string, string>();
  const declared = new Map<string, Node>();
  const tests: Node[] = [];
  walk(program as ESTree.Program as unknown as Node, (node) => {
    if (node.type === "ImportSpecifier") imported.set(node.local!.name!, node.imported!.name!);
    const isNamed = node.type === "VariableDeclarator" || node.type === "FunctionDeclaration";
    if (isNamed && isNode(node.id) && node.id.name !== undefined) declared.set(node.id.name, node);
    if (isPropertyTest(node)) tests.push(node);
  });
  const [names, solved] = [new Set<string>(), new Set<string>()];
  for (const node of tests) {
    const known = namesIn(node);
    // A set grows while it is gone through: what a name stands for is looked at as well.
    for (const name of known) {
      const source = imported.get(name);
      if (source !== undefined) names.add(source);
      const body = declared.get(name);
      if (body !== undefined) for (const inner of namesIn(body)) known.add(inner);
    }
    if (calleeOf(node)?.name === "solvesBack") solved.add(imported.get(node.arguments![0]!.name!)!);
  }
  return { properties: tests.length, names, solved };
}
