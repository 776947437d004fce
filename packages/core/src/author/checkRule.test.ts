import { readFileSync } from "node:fs";
import { ruleFiles, sources } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../read/Problem.ts";
import { parseSource } from "../read/parseSource.ts";
import { type AuthorKind, authorKinds, isNote } from "./AuthorKind.ts";
import { checkRule } from "./checkRule.ts";
import { rulePath, ruleText } from "./ruleText.test-support.ts";
import { scoreRule } from "./scoreRule.ts";

const alone = { rules: [], sources };

/** What is changed in the sound file, and the one problem that it must then have. */
type Row = readonly [kind: AuthorKind, from: string | RegExp, to: string, message: string];

const requires =
  "{ fact: topRingBackClearance, operator: greaterThanInclusive, value: { fact: limit.least } }";

const rows: readonly Row[] = [
  [
    "not-yaml",
    "  work: order",
    "\twork: order",
    "24:1: found a tab at the head of a line; expected spaces: YAML does not indent with tabs.",
  ],
  ["not-yaml", "title: The", "title: [The", "found something that is not YAML or JSON"],
  [
    "not-yaml",
    "stages: [choose, machine]",
    "stages: [choose]\nstages: [run]",
    "found something that is not YAML or JSON (Map keys must be unique)",
  ],
  [
    "unknown-key",
    "because: Only",
    "becuase: Only",
    '27:1: becuase: found the unknown key "becuase". Did you mean "because"?',
  ],
  [
    "unknown-key",
    "movedBy",
    "movedby",
    '20:5: limits.least.movedby: found the unknown key "movedby". Did you mean "movedBy"?',
  ],
  [
    "unknown-key",
    `    - ${requires}`,
    `    - { fact: topRingBackClearance, oparator: greaterThanInclusive, value: { fact: limit.least } }`,
    'Did you mean "operator"?',
  ],
  [
    "unknown-key",
    "requires:\n  all:",
    "requires:\n  al:",
    'requires.al: found the unknown key "al". Did you mean "all"?',
  ],
  [
    "missing-key",
    /because: .*\n/,
    "",
    '1: because: found no "because"; expected because: a text: the reason, so that a builder recognises it.',
  ],
  [
    "missing-key",
    "    standing: common-practice\n",
    "",
    'limits.least.standing: found no "standing"; expected standing: one of standard, handbook, derivation, common-practice, from-memory: how well founded it is.',
  ],
  [
    "missing-key",
    /sources:\n.*\n/,
    "",
    'sources: found no "sources"; expected sources: a list: where the limit comes from: ids of sources.yaml',
  ],
  ["missing-key", "operator: lessThan, ", "", 'requires.all.1: found a comparison without "operator"'],
  [
    "wrong-word",
    "[choose, machine]",
    "[choose, machin]",
    'stages.1: found "machin". Did you mean "machine"? Expected one of choose, machine, trial-assembly, final-assembly, run.',
  ],
  [
    "wrong-word",
    "operator: lessThan,",
    "operator: lesThan,",
    '14:37: requires.all.1.operator: found "lesThan". Did you mean "lessThan"?',
  ],
  [
    "wrong-word",
    "operator: lessThan,",
    "operator: >=,",
    "14:37: operator: found the sign >=; expected its word: greaterThanInclusive.",
  ],
  [
    "wrong-word",
    "operator: lessThan,",
    'operator: "<",',
    "14:38: operator: found the sign <; expected its word: lessThan.",
  ],
  [
    "wrong-word",
    "operator: lessThan,",
    "operator: !=,",
    "14:37: operator: found the sign !=; expected its word: notEqual.",
  ],
  [
    "wrong-word",
    "{ fact: block.bore, operator: lessThan, value: 120 mm }",
    "fact: block.bore\n      operator: ≤\n      value: 120 mm",
    "15:17: operator: found the sign ≤; expected its word: lessThanInclusive.",
  ],
  [
    "wrong-word",
    "work: order",
    "work: buy",
    '24:9: otherwise.work: found "buy"; expected one of order, machine, measure, assemble, operate.',
  ],
  [
    "wrong-type",
    "parts: [ring-set, piston, fuel]",
    "parts: piston",
    '5:8: parts: found "piston"; expected a list: the parts that it is about',
  ],
  [
    "wrong-type",
    /requires:\n(.*\n){3}/,
    "requires: enough room\n",
    'requires: found "enough room"; expected { fact: …, operator: …, value: … }',
  ],
  [
    "wrong-type",
    /requires:\n(.*\n){3}/,
    "requires: { all: [] }\n",
    "requires.all: found an empty list; expected a list with at least one condition.",
  ],
  ["wrong-type", /^[\s\S]*$/, "", "found an empty file; expected a rule file"],
  [
    "wrong-length",
    "Only for tests of the checks of rule files.",
    "So.",
    'because: found "So."; expected at least 8 characters.',
  ],
  [
    "wrong-form",
    "id: rule-for-tests",
    "id: Rule_for_tests",
    'id: found "Rule_for_tests"; expected words in small letters joined by hyphens.',
  ],
  [
    "wrong-file-name",
    "id: rule-for-tests",
    "id: rule-for-test",
    '2:5: id: found "rule-for-test"; expected "rule-for-tests", which is the name of the file',
  ],
  ["wrong-folder", "system: rings", "system: pistons", '4:9: system: found "pistons" in the folder "rings"'],
  [
    "unknown-part",
    "parts: [ring-set, piston, fuel]",
    "parts: [ring-set, pistn, fuel]",
    'parts.1: found "pistn". Did you mean "piston"?',
  ],
  [
    "unknown-fact",
    "fact: topRingBackClearance",
    "fact: topRingBakClearance",
    '13:15: requires.all.0.fact: found "topRingBakClearance", which is no field and no quantity. Did you mean "topRingBackClearance"?',
  ],
  [
    "wrong-operator",
    "block.bore, operator: lessThan, value: 120 mm",
    'block.bore, operator: in, value: ["120"]',
    "found in, which cannot compare block.bore: it is a number",
  ],
  [
    "wrong-operator",
    "fact: use, operator: in, value: [street, circuit]",
    "fact: use, operator: lessThan, value: street",
    "found lessThan, which cannot compare use: it is a word",
  ],
  [
    "nominal-only",
    "fact: block.bore, operator: lessThan, value: 120 mm",
    "fact: rodToCylinderAngle, operator: lessThan, value: 120 deg",
    'found "rodToCylinderAngle", which is known at the nominal values only',
  ],
  [
    "wrong-unit",
    "value: 120 mm",
    "value: 120 kg",
    'requires.all.1.value: found "120 kg" (a kilogram, which measures something else); expected a number with its unit (m, ',
  ],
  [
    "wrong-unit",
    "0.30 mm }",
    "0.30 mn }",
    'limits.least.cases.0.value: found "0.30 mn" (an unknown unit or word "mn")',
  ],
  [
    "no-unit",
    "value: 0.20 mm",
    'value: "0.20"',
    'limits.least.value: found "0.20" (a number without a unit)',
  ],
  ["not-a-number", "value: 0.20 mm", "value: about 0.20 mm", 'found "about 0.20 mm" (no number at its head)'],
  [
    "not-a-number",
    "value: 0.20 mm",
    "value: 0.20 mm ± 0.01",
    'found "0.20 mm ± 0.01", a limit with a tolerance',
  ],
  [
    "unknown-word",
    "[street, circuit]",
    "[street, circus]",
    '9:50: when.all.0.value.1: found "circus", but use is never "circus". Did you mean "circuit"?',
  ],
  [
    "limit-undeclared",
    "limit.least } }",
    "limit.last } }",
    'found "limit.last", which is not among its limits. Did you mean "limit.least"?',
  ],
  [
    "limit-unused",
    "otherwise:",
    "  most: { value: 1 mm, range: [1 mm, 1 mm], standing: common-practice, movedBy: [] }\notherwise:",
    "23:3: limits.most: found limit.most, which is never compared with anything",
  ],
  [
    "confirm-undeclared",
    "    - { fact: block.bore, operator: lessThan, value: 120 mm }",
    '    - { fact: confirmed, operator: equal, value: "yes" }',
    'found "confirmed", in a rule that does not say what to look at',
  ],
  [
    "confirm-unused",
    "otherwise:",
    "confirm: { check: Look at the rings., moment: When they are fitted., failure: One is broken. }\notherwise:",
    "23:1: confirm: found what to look at, but no condition asks for",
  ],
  [
    "phase-undeclared",
    "stages: [choose, machine]",
    "stages: [run]\nconfirm: { check: Look at the rings., moment: When they are fitted., failure: One is broken. }",
    "confirm: found no firstRun beside it; expected firstRun: one of before, during, after",
  ],
  [
    "phase-unused",
    "stages: [choose, machine]",
    "stages: [choose, machine]\nfirstRun: before",
    "firstRun: found firstRun, but its stages are choose, machine",
  ],
  [
    "limit-in-case",
    "{ fact: use, operator: equal, value: street }, value: 0.30 mm }",
    "{ fact: topRingBackClearance, operator: lessThan, value: { fact: limit.least } }, value: 0.30 mm }",
    'found "limit.least" in the condition of a case',
  ],
  [
    "range-reversed",
    "[0.10 mm, 0.50 mm]",
    "[0.50 mm, 0.10 mm]",
    "18:12: limits.least.range: found a range that runs backwards, from 0.50 mm to 0.10 mm; expected the lower end first.",
  ],
  [
    "outside-range",
    "[0.10 mm, 0.50 mm]",
    "[0.10 mm, 0.25 mm]",
    "limits.least.cases.0.value: found 0.30 mm, which lies outside its own range; expected a value from 0.10 mm to 0.25 mm",
  ],
  [
    "unknown-name-in-text",
    "{limit.least} is",
    "{limit.lest} is",
    'otherwise.do: found "{limit.lest}", which prints nothing. Did you mean "limit.least"?',
  ],
  [
    "braces-without-name",
    "is {topRingBackClearance};",
    "is {top ring back clearance};",
    '26:7: otherwise.do: found "{top ring back clearance}", which prints nothing. Did you mean "{topRingBackClearance}"? Expected a name alone in the braces',
  ],
  [
    "braces-without-name",
    "is {topRingBackClearance};",
    "is {top-ring-back-clearance};",
    'found "{top-ring-back-clearance}", which prints nothing. Did you mean "{topRingBackClearance}"?',
  ],
  [
    "braces-without-name",
    "is {topRingBackClearance};",
    "is { topRingBackClearance };",
    'found "{ topRingBackClearance }", which prints nothing. Did you mean "{topRingBackClearance}"?',
  ],
  [
    "braces-without-name",
    "{limit.least} is",
    "{limit.least is",
    'found "{limit.least", a brace without its other half. Did you mean "{limit.least}"?',
  ],
  [
    "braces-without-name",
    "because: Only for",
    "because: Only }for",
    'because: found "}", a brace without its other half; expected a name alone in the braces',
  ],
  [
    "braces-without-name",
    "title: The ring lands leave",
    "title: The {ringLands} leave",
    "3:8: title: found braces, which print nothing here; expected names in braces in `do` and `because` only.",
  ],
  [
    "contradiction",
    "operator: lessThan, value: 120 mm",
    "operator: lessThan, value: 120 mm }\n    - { fact: block.bore, operator: greaterThan, value: 130 mm",
    "12:3: requires: found conditions on topRingBackClearance, block.bore that contradict",
  ],
  [
    "contradiction",
    "value: [street, circuit] }",
    "value: [street, circuit] }\n    - { fact: use, operator: equal, value: drag }",
    "when: found conditions on use, block.cylinders that contradict",
  ],
  [
    "always-true",
    "block.bore, operator: lessThan, value: 120 mm",
    "block.bore, operator: greaterThan, value: 0 mm",
    "14:7: requires.all.1: found a condition on block.bore that every value meets",
  ],
  [
    "always-true",
    "{ fact: use, operator: in, value: [street, circuit] }",
    "any: [{ fact: use, operator: equal, value: street }, { fact: use, operator: notEqual, value: street }]",
    "when.all.0: found a condition on use that every value meets",
  ],
  [
    "says-nothing-new",
    "block.bore, operator: lessThan, value: 120 mm }",
    "block.bore, operator: lessThan, value: 120 mm }\n    - { fact: block.bore, operator: lessThan, value: 130 mm }",
    "requires.all.2: found a condition on block.bore that the others beside it make needless",
  ],
  [
    "never-fails",
    /requires:[\s\S]*?because/,
    "requires: { fact: use, operator: notEqual, value: drag }\notherwise: { work: order, weight: note, do: Nothing at all. }\nbecause",
    "requires: found what always holds where the rule is relevant",
  ],
  [
    "never-holds",
    /requires:[\s\S]*?because/,
    "requires: { fact: use, operator: equal, value: drag }\notherwise: { work: order, weight: note, do: Nothing at all. }\nbecause",
    "requires: found what never holds where the rule is relevant",
  ],
  [
    "case-never-applies",
    "operator: equal, value: street }, value: 0.30 mm }",
    "operator: equal, value: street }, value: 0.30 mm }\n      - { when: { fact: use, operator: equal, value: street }, value: 0.40 mm }",
    "limits.least.cases.1: found a case of 0.40 mm that never applies",
  ],
  [
    "case-never-applies",
    "operator: equal, value: street }, value: 0.30 mm }",
    "operator: equal, value: street }, value: 0.30 mm }\n      - { when: { fact: use, operator: equal, value: drag }, value: 0.40 mm }",
    "limits.least.cases.1: found a case of 0.40 mm that never applies",
  ],
  [
    "case-changes-nothing",
    "operator: equal, value: street }, value: 0.30 mm }",
    "operator: equal, value: street }, value: 0.30 mm }\n      - { when: { fact: use, operator: equal, value: circuit }, value: 0.2 mm }",
    "limits.least.cases.1: found a case of 0.2 mm, which is the value without it",
  ],
  [
    "unknown-source",
    "{ id: common-practice }",
    "{ id: comon-practice }",
    '29:11: sources.0.id: found "comon-practice". Did you mean "common-practice"?',
  ],
  [
    "unfounded-standing",
    "standing: common-practice",
    "standing: standard",
    'limits.least.standing: found the standing "standard", without a source of its kind among the rule\'s sources; expected a source that is standard, or a humbler standing.',
  ],
  ["missing-caution", "work: order", "work: machine", "found no caution, with machine work on fuel"],
  ["missing-caution", "weight: note", "weight: stop", "23:1: otherwise: found no caution on a stop rule"],
  [
    "unreadable-example",
    "block.bore: 119.9 mm ± 0",
    "block.bore: 119.9 kg",
    'examples.1.given.block.bore: found "119.9 kg"',
  ],
  [
    "unreadable-example",
    "block.bore: 119.9 mm ± 0",
    "block.boor: 119.9 mm",
    'examples.1.given.block.boor: found the unknown field "boor". Did you mean "bore"?',
  ],
  [
    "unreadable-example",
    "topRingBackClearance: 0.20 mm",
    'topRingBackClearance: "0.20"',
    'examples.1.given.topRingBackClearance: found "0.20" (a number without a unit)',
  ],
  [
    "wrong-verdict",
    "0.21 mm, block.bore: 90 mm ± 0 }\n    verdict: holds",
    "0.21 mm, block.bore: 90 mm ± 0 }\n    verdict: fails",
    '33:14: examples.0.verdict: found "fails" for "inside", where the rule says "holds"',
  ],
  [
    "wrong-missing",
    "verdict: unknown",
    "verdict: unknown\n    missing: [use]",
    "examples.8.missing: found use, where piston.diameter, piston.topGrooveRootDiameter, ringSet.topRingRadialThickness is missing",
  ],
  ["same-name", "name: on it", "name: inside", '34:11: examples.1.name: found "inside" twice'],
  [
    "no-example-at-limit",
    /topRingBackClearance: 0\.(29|19) mm/g,
    "topRingBackClearance: 0.30 mm",
    "16:3: limits.least: found no example outside limit.least; expected one just inside, one on and one just outside every limit.",
  ],
  [
    "no-unknown-example",
    / {2}- name: not known yet\n.*\n.*\n/,
    "",
    "30:1: examples: found no example that is unknown; expected one that leaves out an input.",
  ],
  [
    "to-fill-in",
    "Only for tests of the checks of rule files.",
    '"Fill in: why it matters."',
    "27:10: because: found a place that is left to you; expected why it matters.",
  ],
  [
    "no-not-applicable-example",
    / {2}- name: (two cylinders|another use.*)\n.*\n.*\n/g,
    "",
    "examples: found no example that is not-applicable",
  ],
];

const changed = (from: string | RegExp, to: string) => ruleText.replace(from, () => to);

describe("the file that the rows change", () => {
  it("has no problem, and examples that notice every slip", () => {
    expect(checkRule(ruleText, rulePath, alone)).toEqual([]);
    const { made, caught } = scoreRule(parseSource(ruleText, rulePath).data as (typeof ruleFiles)[number]);
    expect([made, caught]).toEqual([29, 29]);
  });
});

describe("each kind of problem is found, and said at its place", () => {
  it.each(rows)("%s: %s", (kind, from, to, message) => {
    const text = changed(from, to);
    expect(text).not.toBe(ruleText);
    const problems = checkRule(text, rulePath, alone);
    const found = problems.find((problem) => problem.kind === kind);
    expect(found, problems.map((one) => `${one.kind} ${formatProblem(one)}`).join("\n")).toBeDefined();
    expect(formatProblem(found!)).toContain(message);
    expect(formatProblem(found!)).toMatch(/^rules\/rings\/rule-for-tests\.yaml:\d+:\d+: /);
  });
  it("for every kind that there is, but those that only notes and reading find", () => {
    const without = Object.keys(authorKinds).filter(
      (kind) => !isNote(kind as AuthorKind) && !rows.some((row) => row[0] === kind),
    );
    expect(without).toEqual(["duplicate-id", "unnoticed-slip", "needless-part"]);
    expect(new Set(rows.map(([kind]) => kind)).size).toBeGreaterThanOrEqual(38);
  });
});

describe("one slip", () => {
  it.each([
    ["fact: topRingBackClearance", "fact: topRingBakClearance"],
    ["value: 120 mm", "value: 120 kg"],
    ["limit.least } }", "limit.last } }"],
  ])("%s read as %s is said once, without what follows from it", (from, to) => {
    const problems = checkRule(changed(from, to), rulePath, alone);
    expect(problems.filter((one) => one.kind !== "limit-unused")).toHaveLength(1);
    expect(problems.length).toBe(to.startsWith("limit") ? 2 : 1);
  });
});

describe("beside the other rules of the catalog", () => {
  const neighbour = ruleFiles.find((file) => file.id === "top-ring-back-clearance")!;
  const warns = { ...neighbour.otherwise, weight: "caution" as const };
  const beside = (change: Partial<(typeof ruleFiles)[number]>) => ({
    rules: [{ ...neighbour, ...change }],
    sources,
  });
  it("an id that another system has is refused; the rule itself is not another", () => {
    const twin = beside({ id: "rule-for-tests", system: "pistons" });
    expect(checkRule(ruleText, rulePath, twin).map(formatProblem)).toEqual([
      'rules/rings/rule-for-tests.yaml:2:5: id: found "rule-for-tests", which a rule of pistons has as well; expected an id of its own.',
    ]);
    expect(checkRule(ruleText, rulePath, beside({ id: "rule-for-tests" }))).toEqual([]);
  });
  it("one that asks the same is named in a note", () => {
    const [note, ...more] = checkRule(ruleText, rulePath, beside({ otherwise: warns }));
    expect(more).toEqual([]);
    expect(note).toMatchObject({ kind: "overlap", weight: "note", line: 11 });
    expect(note?.found).toBe(
      "a lower limit of topRingBackClearance, which the rule top-ring-back-clearance asks as well",
    );
  });
  it("one that is never relevant at once, asks the other side, or stops what this one warns of is not", () => {
    const when = { fact: "use", operator: "equal" as const, value: "drag" };
    expect(checkRule(ruleText, rulePath, beside({ otherwise: warns, when }))).toEqual([]);
    const turned = { fact: "topRingBackClearance", operator: "lessThan" as const, value: "1 mm" };
    expect(checkRule(ruleText, rulePath, beside({ otherwise: warns, requires: turned }))).toEqual([]);
    expect(neighbour.otherwise.weight).toBe("stop");
    expect(checkRule(ruleText, rulePath, beside({}))).toEqual([]);
  });
  it("a published source without the place in it is noted", () => {
    const handbook = Object.keys(sources).find((id) => sources[id]!.kind === "handbook")!;
    const cited = (place: string) =>
      ruleText.replace("{ id: common-practice }", `{ id: common-practice }\n  - { id: ${handbook}${place} }`);
    const [note, ...more] = checkRule(cited(""), rulePath, alone);
    expect(more).toEqual([]);
    expect(note).toMatchObject({ kind: "no-place", weight: "note", line: 30 });
    expect(checkRule(cited(", where: table 3"), rulePath, alone)).toEqual([]);
  });
  it("a rule that lists every word is noted: it asks whether something is stated", () => {
    const text = `id: power-place-stated
title: The power target says where it is meant
system: targets
parts: [targets]
stages: [choose]
requires: { fact: targets.power.place, operator: in, value: [at crank, at wheels] }
otherwise: { work: measure, weight: note, do: Say whether it is meant at the crankshaft or at the wheels. }
because: The driveline takes its part of the power.
sources: [{ id: common-practice }]
examples:
  - { name: at the crankshaft, given: { targets.power: 640 kW at crank }, verdict: holds }
  - { name: at the wheels, given: { targets.power: 640 kW at wheels }, verdict: holds }
  - { name: no power target, given: {}, verdict: unknown }
`;
    const problems = checkRule(text, "rules/targets/power-place-stated.yaml");
    expect(problems.map(({ kind, weight }) => [kind, weight])).toEqual([["asks-if-stated", "note"]]);
  });
});

describe("the catalog", () => {
  it.each(ruleFiles.map((file) => [`${file.system}/${file.id}`]))("%s has no error", (name) => {
    const path = `rules/${name}.yaml`;
    const text = readFileSync(new URL(`../../../../${path}`, import.meta.url), "utf8");
    const errors = checkRule(text, path).filter((problem) => problem.weight === "error");
    expect(errors.map(formatProblem)).toEqual([]);
  });
});
