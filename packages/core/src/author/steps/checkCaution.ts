import { cautionedParts, cautionedWorks, paperSystems } from "../cautionedWork.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

/** Work that can hurt someone carries a caution. */
export function checkCaution({ file }: CheckedRule): readonly AuthorIssue[] {
  if (file.caution !== undefined) return [];
  const { work, weight } = file.otherwise;
  const parts = cautionedWorks.has(work) ? file.parts.filter((part) => cautionedParts.has(part)) : [];
  if (parts.length === 0 && (weight !== "stop" || paperSystems.has(file.system))) return [];
  const found =
    parts.length > 0 ? `no caution, with ${work} work on ${parts.join(", ")}` : "no caution on a stop rule";
  const expected = "caution: what can hurt whom, and that the part maker's instructions come first";
  return [{ kind: "missing-caution", path: ["otherwise"], key: true, found, expected }];
}
