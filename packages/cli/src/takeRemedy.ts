import type { Remedy, RemedyReport } from "trialfit";
import { UsageError } from "./UsageError.ts";

/**
 * The change that is taken into the build file: of the one finding the field that is named, or the first that is clean.
 * @param path of a field; without it what breaks something, or plainly worsens what fails already, is not taken
 * @returns undefined where there is nothing to remedy
 * @throws UsageError where there is no such change, or it cannot be written
 */
export function takeRemedy({ findings }: RemedyReport, path: string | undefined): Remedy | undefined {
  const [finding] = findings;
  if (finding === undefined) return undefined;
  const all = [...finding.remedies, ...finding.compromises];
  const isClean = ({ brings, worsens }: Remedy) =>
    brings.length === 0 && worsens.every(({ slight }) => slight);
  const taken = all.find((one) => (path === undefined ? isClean(one) : one.path === path));
  if (taken === undefined) {
    const offered = all.length === 0 ? "nothing" : all.map((one) => one.path).join(", ");
    throw new UsageError(
      path === undefined
        ? `no change of one dimension makes ${finding.rule} hold without harm, so none is written; choose with --take from: ${offered}`
        : `${path} is no remedy for ${finding.rule}; offered: ${offered}`,
    );
  }
  if (taken.text === undefined)
    throw new UsageError(
      `${taken.path} was measured place by place: have it changed, measure again, and enter the new readings`,
    );
  return taken;
}
