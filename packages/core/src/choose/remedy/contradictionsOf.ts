import type { Contradiction, FindingRemedies, Remedy } from "./Remedy.ts";

type Side = "larger" | "smaller";

const sideOf = ({ from, to }: Remedy): Side => (to > from ? "larger" : "smaller");
const other = (side: Side): Side => (side === "larger" ? "smaller" : "larger");

/** The dimensions that some findings want larger and others smaller, in the order in which they are met. */
export function contradictionsOf(findings: readonly FindingRemedies[]): readonly Contradiction[] {
  const wanted = new Map<string, { label: string; larger: Set<string>; smaller: Set<string> }>();
  for (const { rule, remedies, compromises } of findings)
    for (const remedy of [...remedies, ...compromises]) {
      const { path, label } = remedy;
      const sides = wanted.get(path) ?? { label, larger: new Set(), smaller: new Set() };
      sides[sideOf(remedy)].add(rule);
      wanted.set(path, sides);
    }
  // A rule that can be met from either side stands on both; it contradicts no other by itself.
  const pulls = ({ larger, smaller }: { larger: Set<string>; smaller: Set<string> }) =>
    [...larger].some((one) => [...smaller].some((another) => another !== one));
  return [...wanted]
    .filter(([, sides]) => pulls(sides))
    .map(([path, { label, larger, smaller }]) => ({
      path,
      label,
      larger: [...larger],
      smaller: [...smaller],
    }));
}

/** The findings with what each of their remedies contradicts; what a remedy settles as well it does not. */
export function withContradictions(
  findings: readonly FindingRemedies[],
  contradictions: readonly Contradiction[],
): readonly FindingRemedies[] {
  const by = new Map(contradictions.map((one) => [one.path, one]));
  return findings.map((finding) => {
    const told = (remedy: Remedy): Remedy => ({
      ...remedy,
      contradicts: (by.get(remedy.path)?.[other(sideOf(remedy))] ?? []).filter(
        (rule) => rule !== finding.rule && !remedy.settles.includes(rule),
      ),
    });
    return { ...finding, remedies: finding.remedies.map(told), compromises: finding.compromises.map(told) };
  });
}
