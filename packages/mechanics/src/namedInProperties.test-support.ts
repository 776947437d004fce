import { type ESTree, parseSync } from "vite";

/** Any node of the parsed text; its parts are looked at without knowing its kind. */
interface Node {
  readonly type: string;
  readonly name?: string;
  readonly computed?: boolean;
  readonly callee?: unknown;
  readonly property?: unknown;
  readonly id?: unknown;
  readonly local?: Node;
  readonly imported?: Node;
  readonly arguments?: readonly Node[];
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

function partsOf(node: Node): readonly (readonly [key: string, part: Node])[] {
  return Object.entries(node).flatMap(([key, value]) =>
    (Array.isArray(value) ? value : [value]).filter(isNode).map((part) => [key, part] as const),
  );
}

function walk(node: Node, visit: (node: Node) => void): void {
  visit(node);
  for (const [, part] of partsOf(node)) walk(part, visit);
}

/** Names read in a node: not those of members and keys, and not those that it declares itself. */
function namesIn(node: Node): Set<string> {
  const [read, declared] = [new Set<string>(), new Set<string>()];
  const look = (at: Node, isDeclaring: boolean): void => {
    if (at.type === "Identifier") (isDeclaring ? declared : read).add(at.name!);
    for (const [key, part] of partsOf(at)) {
      const isLabel = (key === "key" || key === "property") && at.computed !== true;
      if (isLabel || key === "typeAnnotation") continue;
      const declares = key === "params" || (at.type === "VariableDeclarator" && key === "id");
      // What stands to the right in a pattern is a default: it is read.
      look(part, key === "right" || key === "body" || key === "init" ? false : isDeclaring || declares);
    }
  };
  look(node, false);
  return new Set([...read].filter((name) => !declared.has(name)));
}

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
