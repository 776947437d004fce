import type { SourceFile, Standing } from "@trialfit/rules";
import { nearestWord } from "../../read/nearestWord.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

/** Kinds of source on which a standing can rest. */
const foundations: Readonly<Record<Standing, readonly SourceFile["kind"][]>> = {
  standard: ["standard"],
  handbook: ["handbook", "textbook", "paper", "standard"],
  derivation: ["derivation", "handbook", "textbook", "paper", "standard"],
  "common-practice": ["common-practice"],
  "from-memory": ["from-memory"],
};

/** Kinds of source that are printed, so that a reader can look the place up. */
const PRINTED: ReadonlySet<SourceFile["kind"]> = new Set(["standard", "handbook", "textbook", "paper"]);

function withoutPlace({ file, sources }: CheckedRule): readonly AuthorIssue[] {
  return file.sources.flatMap(({ id, where }, index): readonly AuthorIssue[] => {
    const kind = sources[id]?.kind;
    if (kind === undefined || !PRINTED.has(kind) || where !== undefined) return [];
    const found = `"${id}", a ${kind}, without the place in it`;
    return [
      { kind: "no-place", path: ["sources", index], found, expected: "where: a section, table or page" },
    ];
  });
}

/** Every source is listed, and every limit rests on a source of the kind that its standing claims. */
export function checkSources(checked: CheckedRule): readonly AuthorIssue[] {
  const { file, sources } = checked;
  const known = Object.keys(sources);
  const unknown = file.sources.flatMap(({ id }, index): readonly AuthorIssue[] => {
    if (Object.hasOwn(sources, id)) return [];
    const near = nearestWord(id, known);
    const expected = "an id of rules/sources.yaml; add the source there first";
    const issue = {
      kind: "unknown-source",
      path: ["sources", index, "id"],
      found: `"${id}"`,
      expected,
    } as const;
    return [near === undefined ? issue : { ...issue, didYouMean: near }];
  });
  const kinds = new Set(file.sources.flatMap(({ id }) => sources[id]?.kind ?? []));
  const unfounded = Object.entries(file.limits ?? {}).flatMap(([name, { standing }]): AuthorIssue[] => {
    if (foundations[standing].some((kind) => kinds.has(kind))) return [];
    const found = `the standing "${standing}", without a source of its kind among the rule's sources`;
    const expected = `a source that is ${foundations[standing].join(" or ")}, or a humbler standing`;
    return [{ kind: "unfounded-standing", path: ["limits", name, "standing"], found, expected }];
  });
  return unknown.length > 0 ? unknown : [...unfounded, ...withoutPlace(checked)];
}
