import { parseSync } from "vite";

interface Declared {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly declaration?: Declared | null;
  readonly id?: { readonly name: string } | null;
  readonly params?: readonly Declared[];
  readonly name?: string;
  readonly left?: Declared;
  readonly returnType?: { readonly typeAnnotation: Declared } | null;
  readonly body?: Declared | null;
  readonly kind?: string;
  readonly declarations?: readonly {
    readonly id: { readonly name: string };
    readonly init: Declared | null;
  }[];
}

/** One exported function: its name, its docstring and what that has to speak of. */
export interface ExportedFunction {
  readonly name: string;
  readonly doc: string;
  readonly params: readonly string[];
  readonly givesBack: boolean;
}

/** Functions that a file exports, as declarations or as constants. Of several signatures the first counts. */
export function exportedFunctions(text: string): readonly ExportedFunction[] {
  const { program, comments, errors } = parseSync("file.ts", text);
  if (errors.length > 0) throw new Error(errors[0]!.message);
  const docBefore = (start: number) =>
    comments.findLast(
      ({ type, value, end }) =>
        type === "Block" && value.startsWith("*") && end <= start && text.slice(end, start).trim() === "",
    )?.value ?? "";
  const found = new Map<string, ExportedFunction>();
  for (const node of program.body as unknown as readonly Declared[]) {
    const declaration = node.type === "ExportNamedDeclaration" ? node.declaration : undefined;
    const pairs =
      declaration?.type === "VariableDeclaration"
        ? declaration.declarations!.flatMap(({ id, init }) =>
            init?.type === "ArrowFunctionExpression" ? [[id.name, init] as const] : [],
          )
        : declaration?.type === "FunctionDeclaration" || declaration?.type === "TSDeclareFunction"
          ? [[declaration.id!.name, declaration] as const]
          : [];
    for (const [name, fn] of pairs) {
      if (found.has(name)) continue;
      const params = fn.params!.map((one) => (one.left ?? one).name ?? "");
      const givesBack = !["TSVoidKeyword", "TSNeverKeyword"].includes(
        fn.returnType?.typeAnnotation.type ?? "",
      );
      found.set(name, { name, doc: docBefore(node.start), params, givesBack });
    }
  }
  return [...found.values()];
}
