import { parseAst } from "vite";

/** A value that JSON carries as it is. */
export type Constant =
  | string
  | number
  | boolean
  | null
  | readonly Constant[]
  | { readonly [key: string]: Constant };

/** Names for what the script reads its constants from: none that it uses itself. */
export interface Names {
  /** A function that gives one after the other. */
  readonly next: string;
  /** An array of texts. */
  readonly texts: string;
}

export interface TakenApart {
  readonly code: string;
  /** What the script makes once, in the order in which it does. */
  readonly inOrder: readonly Constant[];
  /** What it may ask for at any time. */
  readonly texts: readonly string[];
}

/** What is shorter as JSON costs as much to ask for as to keep: what comes in order, and what has a number. */
const LEAST = { inOrder: 12, numbered: 24 };

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly value: Constant;
  readonly inOrder: boolean;
}

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

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

const sizeOf = (value: Constant): number => JSON.stringify(value).length;

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

function recordOf(properties: readonly Node[]): Constant | undefined {
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
function constantOf(node: Node): Constant | undefined {
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

/** How a place is reached: in the order of the text, once but perhaps out of order or not at all, or any number of times. */
type Reach = "steady" | "once" | "any";

function reachWithin({ type, static: fixed }: Node, reach: Reach): Reach {
  if (reach === "any" || /Function|MethodDefinition|For|While|Labeled/.test(type)) return "any";
  if (type === "PropertyDefinition" && fixed !== true) return "any";
  return reach === "steady" && STEADY.has(type) ? "steady" : "once";
}

class Search {
  readonly pieces: Piece[] = [];

  private take(from: Node, to: Node, value: Constant, reach: Reach, before = ""): void {
    this.pieces.push({ start: from.start, end: to.end, before, value, inOrder: reach === "steady" });
  }

  /** Properties that follow each other and are written out in full become one spread of an object. */
  private properties(all: readonly Node[]): void {
    let run: Node[] = [];
    const end = () => {
      const value = recordOf(run);
      if (run.length > 0 && sizeOf(value!) >= LEAST.inOrder)
        this.take(run[0]!, run.at(-1)!, value!, "steady", "...");
      else for (const one of run) this.visit(one, "steady");
      run = [];
    };
    for (const one of all) {
      if (recordOf([one]) !== undefined) run.push(one);
      else {
        end();
        this.visit(one, "steady");
      }
    }
    end();
  }

  visit(node: Node, reach: Reach): void {
    const { type } = node;
    if (type === "ImportExpression" || (/^(Im|Ex)port/.test(type) && isNode(node.source))) return;
    if (type === "ExpressionStatement" && typeof node.directive === "string") return;
    if (type === "TaggedTemplateExpression") return;
    const value = constantOf(node);
    const isText = typeof value === "string" && (reach === "steady" || value.includes(" "));
    // Lists and groups may be changed by the script: they are made as often as they were.
    const isGroup = reach === "steady" && typeof value === "object" && value !== null;
    if ((isText || isGroup) && sizeOf(value) >= LEAST[reach === "steady" ? "inOrder" : "numbered"]) {
      this.take(node, node, value, reach);
      return;
    }
    if (type === "ObjectExpression" && reach === "steady") {
      this.properties(node.properties as readonly Node[]);
      return;
    }
    const within = reachWithin(node, reach);
    for (const [key, child] of Object.entries(node)) {
      // A key is a name, whatever it looks like.
      if (key === "key" && node.computed !== true) continue;
      for (const one of Array.isArray(child) ? child : [child]) if (isNode(one)) this.visit(one, within);
    }
  }
}

/**
 * Takes out of a script what is written out in full in it: texts, and lists and groups of constants that are made once.
 * The script that is left computes the same.
 * @param code a module
 */
export function takeApart(code: string, names: Names): TakenApart {
  const search = new Search();
  search.visit(parseAst(code) as unknown as Node, "steady");
  const inOrder: Constant[] = [];
  const texts = new Map<string, number>();
  let [rest, at] = ["", 0];
  for (const { start, end, before, value, inOrder: steady } of search.pieces.sort(
    (a, b) => a.start - b.start,
  )) {
    let call = `${names.next}()`;
    if (steady) inOrder.push(value);
    else {
      const text = value as string;
      if (!texts.has(text)) texts.set(text, texts.size);
      call = `${names.texts}[${texts.get(text)}]`;
    }
    const apart = /[\w$]/.test(code[start - 1] ?? "") ? " " : "";
    rest += `${code.slice(at, start)}${apart}${before}${call}`;
    at = end;
  }
  return { code: rest + code.slice(at), inOrder, texts: [...texts.keys()] };
}
