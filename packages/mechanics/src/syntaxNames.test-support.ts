/** Any node of the parsed text; its parts are looked at without knowing its kind. */
export interface Node {
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

/** Whether a part of a node is itself one. */
export const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

function partsOf(node: Node): readonly (readonly [key: string, part: Node])[] {
  return Object.entries(node).flatMap(([key, value]) =>
    (Array.isArray(value) ? value : [value]).filter(isNode).map((part) => [key, part] as const),
  );
}

/** Visits a node and all its parts. */
export function walk(node: Node, visit: (node: Node) => void): void {
  visit(node);
  for (const [, part] of partsOf(node)) walk(part, visit);
}

/** Names read in a node: not those of members and keys, and not those that it declares itself. */
export function namesIn(node: Node): Set<string> {
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
