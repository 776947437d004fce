import type { ChangedLimit, RuleFile, SetFile } from "@trialfit/rules";
import { readRule } from "../judge/compileRule.ts";
import type { RuleIssue } from "../judge/RuleIssue.ts";
import { nearestWord } from "../read/nearestWord.ts";
import { changeLimit } from "./changeLimit.ts";

/** What is wrong with a set, at its place in the data. */
export type SetIssue = Pick<RuleIssue<string>, "path" | "key" | "found" | "expected" | "didYouMean">;

function unknownRule(id: string, path: SetIssue["path"], rules: readonly RuleFile[]): SetIssue {
  const near = nearestWord(
    id,
    rules.map((one) => one.id),
  );
  return {
    path,
    found: `"${id}", which is no rule`,
    expected: "the id of a rule that the set begins with",
    ...(near === undefined ? {} : { didYouMean: near }),
  };
}

function checkLimit(change: ChangedLimit, index: number, rules: readonly RuleFile[]): readonly SetIssue[] {
  const path = ["limits", index];
  const rule = rules.find(({ id }) => id === change.rule);
  if (rule === undefined) return [unknownRule(change.rule, [...path, "rule"], rules)];
  const names = Object.keys(rule.limits ?? {});
  if (!names.includes(change.limit)) {
    const near = nearestWord(change.limit, names);
    return [
      {
        path: [...path, "limit"],
        found: `"${change.limit}", which is no limit of ${change.rule}`,
        expected: names.length === 0 ? "another rule: this one has no limit" : `one of ${names.join(", ")}`,
        ...(near === undefined ? {} : { didYouMean: near }),
      },
    ];
  }
  // The changed rule is read like any other: what it refuses lies in the value or in the condition.
  const { issues } = readRule(changeLimit(rule, change).file);
  return issues.map(({ path: inRule, found, expected, didYouMean }) => ({
    path: [...path, inRule.includes("when") ? "when" : "value"],
    found,
    expected,
    ...(didYouMean === undefined ? {} : { didYouMean }),
  }));
}

/**
 * What is wrong with a set that has the form of one.
 * @param rules what it begins with: those of the set that it extends
 */
export function checkSet(set: SetFile, rules: readonly RuleFile[]): readonly SetIssue[] {
  const own = set.rules ?? [];
  const every = [...rules, ...own];
  const twice = own.flatMap((rule, index): readonly SetIssue[] =>
    every.filter(({ id }) => id === rule.id).length > 1
      ? [
          {
            path: ["rules", index, "id"],
            found: `"${rule.id}", which another rule has`,
            expected: "an id of its own",
          },
        ]
      : [],
  );
  const silenced = (set.silence ?? []).flatMap(({ rule }, index, all): readonly SetIssue[] => {
    if (!every.some(({ id }) => id === rule)) return [unknownRule(rule, ["silence", index, "rule"], every)];
    const again = all.findIndex((other) => other.rule === rule) < index;
    return again
      ? [{ path: ["silence", index, "rule"], found: `"${rule}" a second time`, expected: "each rule once" }]
      : [];
  });
  return [
    ...own.flatMap((rule, index) =>
      readRule(rule).issues.map((issue) => ({ ...issue, path: ["rules", index, ...issue.path] })),
    ),
    ...twice,
    ...(set.limits ?? []).flatMap((change, index) => checkLimit(change, index, every)),
    ...silenced,
  ];
}
