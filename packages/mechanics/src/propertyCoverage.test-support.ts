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

/** What is wrong with the coverage, and how much was looked at. */
export interface Coverage {
  readonly functions: number;
  readonly properties: number;
  readonly solved: number;
  readonly faults: readonly string[];
}

/** Names and why each is exempt, held to the functions there are and to what is covered anyway. */
export type Exempt = Readonly<Record<string, string>>;

function faultsOf(
  what: string,
  functions: readonly string[],
  covered: ReadonlySet<string>,
  exempt: Exempt,
): readonly string[] {
  const missing = functions.filter((name) => !covered.has(name) && exempt[name] === undefined);
  return [
    ...missing.map((name) => `${name}: found no ${what}, expected one`),
    ...Object.entries(exempt).flatMap(([name, reason]) => [
      ...(functions.includes(name) ? [] : [`${name}: exempt, but no public function`]),
      ...(covered.has(name) ? [`${name}: exempt, but it has a ${what}`] : []),
      ...(reason.length > 15 ? [] : [`${name}: exempt without a reason`]),
    ]),
  ];
}

/**
 * Holds every function to its being named in a property test, and to its inputs being found back from its answer,
 * unless it is exempt with a reason.
 * @param functions names of all public functions
 * @param texts of the test files
 * @param exempt from property tests, and from finding inputs back
 */
export function coverageOf(
  functions: readonly string[],
  texts: readonly string[],
  exempt: { readonly properties: Exempt; readonly solved: Exempt },
): Coverage {
  const files = texts.map(namedInProperties);
  const named = new Set(files.flatMap(({ names }) => [...names]));
  const solved = new Set(files.flatMap((file) => [...file.solved]));
  const properties = files.reduce((sum, file) => sum + file.properties, 0);
  return {
    functions: functions.length,
    properties,
    solved: functions.filter((name) => solved.has(name)).length,
    faults: [
      ...faultsOf("property test", functions, named, exempt.properties),
      ...faultsOf("solve-back of its inputs", functions, solved, exempt.solved),
      ...(functions.length === 0 ? ["no functions"] : []),
      ...(properties === 0 ? ["no property tests"] : []),
    ],
  };
}
