import type { BuildChange } from "../compare/BuildChange.ts";
import type { Build } from "../read/Build.ts";
import { unjudgedPaperSource } from "./makePaperSource.ts";
import type { Paper } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { paperIds, paperKinds } from "./paperKinds.ts";

/** A paper by what it is for. */
export type PaperPurpose = Pick<Paper, "id" | "title" | "purpose">;

/** A change in which nothing changed. */
function noChange({ report }: PaperSource): BuildChange {
  const { trialfit, stage, build, summary } = report;
  const side = { name: build.name, hash: build.hash, summary };
  const nothing = { values: [], quantities: [], verdicts: [] };
  return {
    format: "trialfit-change",
    formatVersion: 1,
    trialfit,
    stage,
    before: side,
    after: side,
    ...nothing,
  };
}

/**
 * The papers that there are, by what each is for. Nothing is judged for it.
 * @param build one that gives every paper something to say
 * @throws Error for a paper that has nothing to say on this build
 */
export async function paperPurposes(build: Build): Promise<readonly PaperPurpose[]> {
  const source = await unjudgedPaperSource(build);
  const asked = { ...source, change: noChange(source), room: () => ({ rules: 0 }) };
  return paperIds.map((id) => {
    const paper = paperKinds[id]!(asked);
    if (paper === undefined) throw new Error(`"${id}" has nothing to say on ${build.name}`);
    return { id, title: paper.title, purpose: paper.purpose };
  });
}
