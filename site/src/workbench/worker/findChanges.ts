import {
  besideTexts,
  type FindingRemedies,
  findingLines,
  findRemedies,
  moveText,
  REMEDY_CAUTION,
  REMEDY_TERMS,
  type Remedy,
  type RemedyProgress,
  type RemedyReport,
  readBuildText,
  works,
} from "trialfit";
import type { ChoosingGround, RemedyItem, RemedyView } from "../choosingProtocol.ts";
import { judgedBy } from "./judgedBy.ts";
import { withLinks } from "./ruleTitles.ts";
import { viewLinked } from "./viewDocument.ts";

function viewRemedy(remedy: Remedy): RemedyItem {
  const { path, label, work, was, provenance, text } = remedy;
  const { less, also, against } = besideTexts(remedy);
  return {
    path,
    label,
    work: works[work],
    was,
    provenance,
    ...(text === undefined ? {} : { text }),
    by: moveText(remedy),
    beside: [against, less, also].filter((one) => one !== undefined).map(withLinks),
  };
}

function viewFinding(finding: FindingRemedies): Omit<RemedyView, "terms" | "caution"> {
  const { head, measure, not } = findingLines(finding);
  return {
    state: finding.state,
    head: viewLinked(head),
    measure: measure.map(viewLinked),
    remedies: finding.remedies.map(viewRemedy),
    not: not.map(viewLinked),
  };
}

/** What `findRemedies` found for one rule, as the page shows it. */
export function viewRemedies({ findings, asked }: RemedyReport): RemedyView {
  const [finding] = findings;
  const shown =
    finding === undefined
      ? {
          head: { label: asked[0]?.verdict ?? "", text: "nothing to change", tone: "good" as const },
          measure: [],
          remedies: [],
          not: [],
        }
      : viewFinding(finding);
  return { ...shown, terms: REMEDY_TERMS, caution: REMEDY_CAUTION };
}

/** Finds the smallest changes that make one finding hold. @throws what `findRemedies` throws */
export async function findChanges(
  ground: ChoosingGround,
  rule: string,
  told: (progress: RemedyProgress) => void,
  signal: AbortSignal,
): Promise<RemedyView> {
  const build = readBuildText(ground.text, ground.file);
  return viewRemedies(await findRemedies(build, { ...judgedBy(ground), only: [rule], told, signal }));
}
