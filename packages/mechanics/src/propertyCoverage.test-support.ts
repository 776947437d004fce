import { namedInProperties } from "./namedInProperties.test-support.ts";

/** What is wrong with the coverage, and how much was looked at. */
export interface Coverage {
  readonly functions: number;
  readonly properties: number;
  readonly solved: number;
  readonly faults: readonly string[];
}

/** Names and why each is exempt, held to the functions there are and to what is covered anyway. */
export type Exempt = Readonly<Record<string, string>>;

function faultsOf(
  what: string,
  functions: readonly string[],
  covered: ReadonlySet<string>,
  exempt: Exempt,
): readonly string[] {
  const missing = functions.filter((name) => !covered.has(name) && exempt[name] === undefined);
  return [
    ...missing.map((name) => `${name}: found no ${what}, expected one`),
    ...Object.entries(exempt).flatMap(([name, reason]) => [
      ...(functions.includes(name) ? [] : [`${name}: exempt, but no public function`]),
      ...(covered.has(name) ? [`${name}: exempt, but it has a ${what}`] : []),
      ...(reason.length > 15 ? [] : [`${name}: exempt without a reason`]),
    ]),
  ];
}

/**
 * Holds every function to its being named in a property test, and to its inputs being found back from its answer,
 * unless it is exempt with a reason.
 * @param functions names of all public functions
 * @param texts of the test files
 * @param exempt from property tests, and from finding inputs back
 */
export function coverageOf(
  functions: readonly string[],
  texts: readonly string[],
  exempt: { readonly properties: Exempt; readonly solved: Exempt },
): Coverage {
  const files = texts.map(namedInProperties);
  const named = new Set(files.flatMap(({ names }) => [...names]));
  const solved = new Set(files.flatMap((file) => [...file.solved]));
  const properties = files.reduce((sum, file) => sum + file.properties, 0);
  return {
    functions: functions.length,
    properties,
    solved: functions.filter((name) => solved.has(name)).length,
    faults: [
      ...faultsOf("property test", functions, named, exempt.properties),
      ...faultsOf("solve-back of its inputs", functions, solved, exempt.solved),
      ...(functions.length === 0 ? ["no functions"] : []),
      ...(properties === 0 ? ["no property tests"] : []),
    ],
  };
}
