import * as z from "zod";

interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly items?: Shape | readonly Shape[];
  readonly description?: string;
  readonly type?: string;
  readonly enum?: readonly string[];
}

/** What a schema of a file that people write has at each place, in words. */
export interface Shapes {
  /** The keys that a group at this place may have. */
  readonly keysAt: (path: readonly PropertyKey[]) => readonly string[];
  /** What the schema says of a place. */
  readonly descriptionAt: (path: readonly PropertyKey[]) => string | undefined;
  /** What belongs at a place, for people. */
  readonly describe: (path: readonly PropertyKey[]) => string;
}

const WHAT: Readonly<Record<string, string>> = {
  string: "a text",
  array: "a list",
  object: "a group of keys",
};

function lowerFirst(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`.replace(/\.$/, "");
}

/** The shapes of a schema, read off it once they are asked for. */
export function shapesOf(schema: z.ZodType): Shapes {
  let whole: Shape | undefined;
  const shapeAt = (path: readonly PropertyKey[]): Shape | undefined => {
    whole ??= z.toJSONSchema(schema, { target: "draft-07" }) as Shape;
    return path.reduce<Shape | undefined>((shape, step) => {
      if (shape === undefined) return undefined;
      if (typeof step === "number") {
        return Array.isArray(shape.items) ? shape.items[step] : (shape.items as Shape | undefined);
      }
      const named = shape.properties?.[String(step)];
      return (
        named ?? (typeof shape.additionalProperties === "object" ? shape.additionalProperties : undefined)
      );
    }, whole);
  };
  return {
    descriptionAt: (path) => shapeAt(path)?.description,
    keysAt: (path) => Object.keys(shapeAt(path)?.properties ?? {}),
    describe: (path) => {
      const shape = shapeAt(path);
      const kind =
        shape?.enum === undefined
          ? (WHAT[shape?.type ?? ""] ?? "a value")
          : `one of ${shape.enum.join(", ")}`;
      return shape?.description === undefined ? kind : `${kind}: ${lowerFirst(shape.description)}`;
    },
  };
}
