import type { Node } from "./Node.ts";

/** What evaluates every part of itself, once, in the order in which they are written. */
const STEADY = new Set([
  "Program",
  "VariableDeclaration",
  "VariableDeclarator",
  "ExpressionStatement",
  "ExportNamedDeclaration",
  "ExportDefaultDeclaration",
  "ParenthesizedExpression",
  "SequenceExpression",
  "CallExpression",
  "NewExpression",
  "ArrayExpression",
  "ObjectExpression",
  "Property",
  "SpreadElement",
]);

/** How a place is reached: in the order of the text, once but perhaps out of order or not at all, or any number of times. */
export type Reach = "steady" | "once" | "any";

/** How what stands within a node is reached. */
export function reachWithin({ type, static: fixed }: Node, reach: Reach): Reach {
  if (reach === "any" || /Function|MethodDefinition|For|While|Labeled/.test(type)) return "any";
  if (type === "PropertyDefinition" && fixed !== true) return "any";
  return reach === "steady" && STEADY.has(type) ? "steady" : "once";
}
