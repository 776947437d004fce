import type { Constant } from "./Constant.ts";
import type { Node } from "./Node.ts";

function literalOf({ value, bigint, regex }: Node): Constant | undefined {
  if (bigint !== undefined && bigint !== null) return undefined;
  if (regex !== undefined && regex !== null) return undefined;
  return value as Constant;
}

function unaryOf({ operator, argument }: Node): Constant | undefined {
  const value = constantOf(argument as Node);
  if (operator === "!" && typeof value === "number") return value === 0;
  // JSON knows no negative zero.
  return operator === "-" && typeof value === "number" && value !== 0 ? -value : undefined;
}

function nameOf({ computed, method, kind, shorthand, type, key }: Node): string | undefined {
  if (type !== "Property" || kind !== "init" || computed === true || method === true || shorthand === true)
    return undefined;
  const { name, value } = key as Node;
  const text = String(name ?? value);
  return text === "__proto__" ? undefined : text;
}

/** Properties that are all written out in full, as a group. */
export function recordOf(properties: readonly Node[]): Constant | undefined {
  const record: Record<string, Constant> = {};
  for (const property of properties) {
    const [name, value] = [nameOf(property), property.value];
    const constant = name === undefined ? undefined : constantOf(value as Node);
    if (constant === undefined) return undefined;
    record[name!] = constant;
  }
  return record;
}

/** The value of an expression that is written out in full; undefined for any other. */
export function constantOf(node: Node): Constant | undefined {
  switch (node.type) {
    case "Literal":
      return literalOf(node);
    case "TemplateLiteral": {
      const [only, more] = node.quasis as readonly (Node & { value: { cooked: string } })[];
      return more === undefined ? only!.value.cooked : undefined;
    }
    case "UnaryExpression":
      return unaryOf(node);
    case "ArrayExpression": {
      const values = (node.elements as readonly (Node | null)[]).map((one) => one && constantOf(one));
      return values.every((one) => one !== undefined && one !== null) ? (values as Constant[]) : undefined;
    }
    case "ObjectExpression":
      return recordOf(node.properties as readonly Node[]);
    default:
      return undefined;
  }
}
