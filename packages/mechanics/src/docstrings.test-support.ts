import { parseSync } from "vite";

/** What the docstring of a function lacks. */
export interface DocstringFault {
  readonly name: string;
  readonly lacks: string;
}

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
interface ExportedFunction {
  readonly name: string;
  readonly doc: string;
  readonly params: readonly string[];
  readonly givesBack: boolean;
}

/** Functions that a file exports, as declarations or as constants. Of several signatures the first counts. */
function exportedFunctions(text: string): readonly ExportedFunction[] {
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

const tagged = (doc: string, tag: string): boolean => new RegExp(`@${tag} +\\S`).test(doc);

function lacksOf({ doc, params, givesBack }: ExportedFunction): readonly string[] {
  const [meaning = ""] = doc.replace(/^\s*\* ?/gm, "").split(/^(?:@|Source:)/m);
  const isNamed = (param: string) => new RegExp(`@param\\s+${param}\\b`).test(doc);
  return [
    ...(meaning.trim().length > 20 ? [] : ["a meaning"]),
    ...params.filter((param) => param !== "" && !isNamed(param)).map((param) => `@param ${param}`),
    // A destructured parameter has no name of its own.
    ...(params.includes("") && !tagged(doc, "param") ? ["@param"] : []),
    ...(givesBack && !tagged(doc, "returns") ? ["@returns"] : []),
    ...(tagged(doc, "throws") ? [] : ["@throws"]),
    ...(/Source: \S/.test(doc) ? [] : ["Source:"]),
  ];
}

/**
 * Holds the docstrings of functions to being whole: meaning, parameters, what is given back, errors and source.
 * @param texts of the source files
 * @param names of the functions that are looked at
 */
export function docstringFaults(texts: readonly string[], names: ReadonlySet<string>) {
  const functions = texts.flatMap(exportedFunctions).filter(({ name }) => names.has(name));
  return {
    checked: functions.length,
    faults: functions.flatMap((one) => lacksOf(one).map((lacks) => ({ name: one.name, lacks }))),
  } satisfies { checked: number; faults: readonly DocstringFault[] };
}
