import { readBuildText, type Solution, type SolvePhase, solutionParts, solve } from "trialfit";
import type { ChoosingGround, FamilyView, SolutionView } from "../choosingProtocol.ts";
import type { ItemView } from "../protocol.ts";
import { drawFamily } from "./drawFamily.tsx";
import { judgedBy } from "./judgedBy.ts";
import { viewDocument, viewItem, viewLinked } from "./viewDocument.ts";

type Solved = Extract<Solution, { state: "solved" }>;
type Parts = ReturnType<typeof solutionParts>;

function familyOf(solution: Solved, { sections }: Parts): FamilyView | undefined {
  const { family } = solution;
  const section = sections.find(({ of }) => of === "others");
  if (family === undefined || section === undefined) return undefined;
  const picture = drawFamily(family, solution.fields);
  return {
    heading: section.heading,
    intro: section.intro ?? "",
    members: family.members.map((member) => member.map(({ path, label, text }) => ({ path, label, text }))),
    ...(picture === undefined ? {} : { picture }),
  };
}

/** Of the report on the build with the sizes what fails or is open. */
function standingOf({ report }: Solved, parts: Parts): SolutionView["standing"] {
  const { lead, sections } = viewDocument(parts.report!);
  const words = new Map(report.verdicts.map(({ rule, verdict }) => [rule, verdict]));
  const findings = sections
    .flatMap(({ items }) => items)
    .flatMap((item): readonly ItemView[] => {
      const word = words.get(item.id ?? "");
      return word === "fails" || word === "open" ? [{ ...item, word }] : [];
    });
  return { lead, findings };
}

/** What `solve` found, as the page shows it. */
export function viewSolution(solution: Solution): SolutionView {
  const parts = solutionParts(solution);
  const part = (name: "sizes" | "aims" | "ranges") => {
    const section = parts.sections.find(({ of }) => of === name);
    return section === undefined
      ? {}
      : {
          [name]: {
            heading: section.heading,
            ...(section.intro === undefined ? {} : { intro: section.intro }),
            items: section.items.map(viewItem),
          },
        };
  };
  const needs =
    solution.state === "missing" ? solution.missing : solution.state === "aimless" ? solution.idle : [];
  const head = {
    state: solution.state,
    lead: parts.lead.map(viewLinked),
    ...(needs.length === 0 ? {} : { needs }),
    found: [],
    ...part("sizes"),
    ...part("aims"),
    ...part("ranges"),
  };
  if (solution.state !== "solved") return head;
  const family = familyOf(solution, parts);
  const standing = standingOf(solution, parts);
  return {
    ...head,
    found: solution.fields.map(({ path, label, text }) => ({ path, label, text })),
    ...(family === undefined ? {} : { family }),
    ...(standing === undefined ? {} : { standing }),
  };
}

/** Finds the sizes that a build file leaves open, and judges it with them. @throws what `solve` throws */
export async function findSizes(
  ground: ChoosingGround,
  told: (phase: SolvePhase) => void,
  signal: AbortSignal,
): Promise<SolutionView> {
  const build = readBuildText(ground.text, ground.file);
  return viewSolution(await solve(build, { ...judgedBy(ground), told, signal }));
}
