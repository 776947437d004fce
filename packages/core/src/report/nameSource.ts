import { type RuleFile, sources } from "@trialfit/rules";

/** A source by its title, with the place in it where one is given. */
export function nameSource({ id, where }: RuleFile["sources"][number]): string {
  return `${sources[id]?.title ?? id}${where === undefined ? "" : `, ${where}`}`;
}
