import type { CompiledRule } from "trialfit";
import { rules } from "./catalog.ts";

/** Words of a name or a text in small letters, without the s of the plural: `flywheelFastener` and "flywheel fasteners" alike. */
function words(text: string): readonly string[] {
  return text
    .replace(/([a-z\d])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z\d]+/)
    .filter((word) => word.length > 2)
    .map((word) => word.replace(/(?<!s)s$/, ""));
}

/** What a rule is about, each once: its facts, the words of their names and of its title, its parts. */
function marksOf({ facts, file }: CompiledRule): ReadonlySet<string> {
  return new Set([
    ...facts.map((fact) => `fact ${fact}`),
    ...facts.flatMap(words),
    ...words(file.title),
    ...file.parts.map((part) => `part ${part}`),
  ]);
}

const marks = new Map(rules.map((rule) => [rule, marksOf(rule)]));
const counts = new Map<string, number>();
for (const mark of [...marks.values()].flatMap((set) => [...set]))
  counts.set(mark, (counts.get(mark) ?? 0) + 1);

/** How much a mark tells: what half the catalog has in common says little, what two rules share says most. */
const weightOf = (mark: string) => Math.log(rules.length / counts.get(mark)!) ** 2;
const sum = (set: Iterable<string>) => [...set].reduce((all, mark) => all + weightOf(mark), 0);
const lengths = new Map(rules.map((rule) => [rule, Math.sqrt(sum(marks.get(rule)!))]));

/** How near two rules are, from 0 to 1: what they share, by how rare it is, against what each is about. */
function nearness(one: CompiledRule, other: CompiledRule): number {
  const own = marks.get(one)!;
  const shared = [...marks.get(other)!].filter((mark) => own.has(mark));
  return sum(shared) / (lengths.get(one)! * lengths.get(other)!);
}

/** Rules nearest to this one, the nearest first. */
export function neighboursOf(rule: CompiledRule, most = 6): readonly CompiledRule[] {
  return rules
    .filter((other) => other !== rule)
    .map((other) => ({ other, near: nearness(rule, other) }))
    .filter(({ near }) => near > 0)
    .sort((a, b) => b.near - a.near || (a.other.file.id < b.other.file.id ? -1 : 1))
    .slice(0, most)
    .map(({ other }) => other);
}
