import { parseAst } from "vite";
import type { Constant } from "./Constant.ts";
import { constantOf, recordOf } from "./constantOf.ts";
import { isNode, type Node } from "./Node.ts";
import { type Reach, reachWithin } from "./reachWithin.ts";

/** Names for what the script reads its constants from: none that it uses itself. */
export interface Names {
  /** A function that gives one after the other. */
  readonly next: string;
  /** An array of those that may be asked for at any time. */
  readonly numbered: string;
}

export interface TakenApart {
  readonly code: string;
  /** What the script makes once, in the order in which it does. */
  readonly inOrder: readonly Constant[];
  /** What it may ask for at any time. */
  readonly numbered: readonly Constant[];
}

/**
 * What is shorter as JSON costs as much to ask for as to keep: what comes in order, what has a number, what is copied,
 * what is read anew each time since it has others within it.
 */
const LEAST = { inOrder: 8, numbered: 24, copied: 32, read: 60 };

interface Piece {
  readonly start: number;
  readonly end: number;
  /** What stands before and after the place where the value is asked for. */
  readonly around: readonly [string, string];
  readonly value: Constant;
  readonly inOrder: boolean;
}

const AS_IT_IS = ["", ""] as const;
/** Kept as a text. */
const READ = ["JSON.parse(", ")"] as const;

/** Whether a copy of it shares nothing with it. */
const isFlat = (value: object): boolean =>
  Object.values(value).every((one) => typeof one !== "object" || one === null);

const sizeOf = (value: Constant): number => JSON.stringify(value).length;

class Search {
  readonly pieces: Piece[] = [];

  private take(from: Node, to: Node, value: Constant, reach: Reach, around: Piece["around"]): void {
    this.pieces.push({ start: from.start, end: to.end, around, value, inOrder: reach === "steady" });
  }

  /** Properties that follow each other and are written out in full become one spread of an object. */
  private properties(all: readonly Node[], reach: Reach): void {
    let run: Node[] = [];
    const end = () => {
      const value = recordOf(run);
      const around = run.length === 0 ? undefined : this.wayOfGroup(value as object, reach);
      if (around === undefined) for (const one of run) this.visit(one, reach);
      else if (around === READ)
        this.take(run[0]!, run.at(-1)!, JSON.stringify(value), reach, ["...JSON.parse(", ")"]);
      else this.take(run[0]!, run.at(-1)!, value!, reach, ["...", ""]);
      run = [];
    };
    for (const one of all) {
      if (recordOf([one]) !== undefined) run.push(one);
      else {
        end();
        this.visit(one, reach);
      }
    }
    end();
  }

  /** How a value can be asked for in its place; undefined where it must stay. */
  private way(value: Constant | undefined, reach: Reach): Piece["around"] | undefined {
    if (typeof value === "string") {
      if (reach === "steady") return sizeOf(value) >= LEAST.inOrder ? AS_IT_IS : undefined;
      return value.includes(" ") && sizeOf(value) >= LEAST.numbered ? AS_IT_IS : undefined;
    }
    return typeof value === "object" && value !== null ? this.wayOfGroup(value, reach) : undefined;
  }

  /** The script makes a list or group anew each time, and may change it, unless it runs once. */
  private wayOfGroup(value: object, reach: Reach): Piece["around"] | undefined {
    const size = sizeOf(value as Constant);
    if (reach === "steady") return size >= LEAST.inOrder ? AS_IT_IS : undefined;
    if (!isFlat(value)) return size >= LEAST.read ? READ : undefined;
    if (size < LEAST.copied) return undefined;
    return Array.isArray(value) ? ["[...", "]"] : ["({...", "})"];
  }

  visit(node: Node, reach: Reach): void {
    const { type } = node;
    if (type === "ImportExpression" || (/^(Im|Ex)port/.test(type) && isNode(node.source))) return;
    if (type === "ExpressionStatement" && typeof node.directive === "string") return;
    if (type === "TaggedTemplateExpression") return;
    const value = constantOf(node);
    const around = this.way(value, reach);
    if (around !== undefined) {
      this.take(node, node, around === READ ? JSON.stringify(value) : value!, reach, around);
      return;
    }
    if (type === "ObjectExpression") {
      this.properties(node.properties as readonly Node[], reach);
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
  const numbers = new Map<string, number>();
  let [rest, at] = ["", 0];
  for (const piece of search.pieces.sort((a, b) => a.start - b.start)) {
    const { start, end, around, value } = piece;
    let call = `${names.next}()`;
    if (piece.inOrder) inOrder.push(value);
    else {
      const text = JSON.stringify(value);
      if (!numbers.has(text)) numbers.set(text, numbers.size);
      call = `${names.numbered}[${numbers.get(text)}]`;
    }
    const apart = /[\w$]/.test(code[start - 1] ?? "") ? " " : "";
    rest += `${code.slice(at, start)}${apart}${around[0]}${call}${around[1]}`;
    at = end;
  }
  return {
    code: rest + code.slice(at),
    inOrder,
    numbered: [...numbers.keys()].map((text) => JSON.parse(text) as Constant),
  };
}
