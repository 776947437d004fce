import { ruleFile } from "@trialfit/rules";
import { z } from "zod";

interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly items?: Shape | readonly Shape[];
  readonly description?: string;
  readonly type?: string;
  readonly enum?: readonly string[];
}

let whole: Shape | undefined;

/** What the schema of a rule file has at a place, or undefined where it has nothing. */
export function shapeAt(path: readonly PropertyKey[]): Shape | undefined {
  whole ??= z.toJSONSchema(ruleFile, { target: "draft-07" }) as Shape;
  return path.reduce<Shape | undefined>((shape, step) => {
    if (shape === undefined) return undefined;
    if (typeof step === "number") {
      return Array.isArray(shape.items) ? shape.items[step] : (shape.items as Shape | undefined);
    }
    const named = shape.properties?.[String(step)];
    return named ?? (typeof shape.additionalProperties === "object" ? shape.additionalProperties : undefined);
  }, whole);
}

/** The keys that a group at this place may have. */
export function keysAt(path: readonly PropertyKey[]): readonly string[] {
  return Object.keys(shapeAt(path)?.properties ?? {});
}

const WHAT: Readonly<Record<string, string>> = {
  string: "a text",
  array: "a list",
  object: "a group of keys",
};

/** What belongs at a place, for people. */
export function describeShape(path: readonly PropertyKey[]): string {
  const shape = shapeAt(path);
  const kind =
    shape?.enum === undefined ? (WHAT[shape?.type ?? ""] ?? "a value") : `one of ${shape.enum.join(", ")}`;
  return shape?.description === undefined ? kind : `${kind}: ${lowerFirst(shape.description)}`;
}

function lowerFirst(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`.replace(/\.$/, "");
}
