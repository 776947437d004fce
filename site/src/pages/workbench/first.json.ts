import { evaluate } from "trialfit";
import { demoBuilds } from "../../data/demoBuilds.ts";
import { viewReport } from "../../workbench/worker/viewReport.ts";

/** What the evaluator says of the demo that the workbench begins with: it stands on the page before the evaluator is there. */
export const GET = async () => Response.json(viewReport(await evaluate(demoBuilds[0]!.build)));
