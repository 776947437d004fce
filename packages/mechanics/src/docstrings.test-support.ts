import { type ExportedFunction, exportedFunctions } from "./exportedFunctions.test-support.ts";

/** What the docstring of a function lacks. */
export interface DocstringFault {
  readonly name: string;
  readonly lacks: string;
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
