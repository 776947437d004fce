import { evaluate } from "trialfit";
import { demoBuilds } from "../../data/demoBuilds.ts";
import type { ItemView } from "../../workbench/protocol.ts";
import { viewReport } from "../../workbench/worker/viewReport.ts";

/** Verdicts that ask nothing: of these the page begins with what stands at a glance, the rest comes with the evaluator. */
const SETTLED: ReadonlySet<string | undefined> = new Set(["holds", "not-applicable"]);

function atFirst({ title, id, tone, word, weight, work, parts, glance, lines, ...rest }: ItemView): ItemView {
  const brief = { title, id, tone, word, weight, work, parts, glance } as ItemView;
  return SETTLED.has(word) ? { ...brief, lines: [] } : { ...brief, ...rest, lines };
}

/** What the evaluator says of the demo that the workbench begins with: it stands on the page before the evaluator is there. */
export const GET = async () => {
  const view = viewReport(await evaluate(demoBuilds[0]!.build));
  const sections = view.sections.map((section) => ({ ...section, items: section.items.map(atFirst) }));
  return Response.json({ ...view, sections });
};
