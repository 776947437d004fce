import { type Build, evaluate, Nominals, type Report, readBuildText } from "trialfit";
import type { DemoText } from "../workbench/protocol.ts";
import { demoTexts } from "./demoTexts.ts";

/** An invented build, evaluated while the site is built. */
export interface DemoBuild extends DemoText {
  readonly build: Build;
  readonly report: Report;
  /** For pictures. */
  readonly nominals: Nominals;
}

async function evaluated(demo: DemoText): Promise<DemoBuild> {
  const build = readBuildText(demo.text, `${demo.id}.yaml`);
  const report = await evaluate(build, { quantities: "all" });
  return { ...demo, build, report, nominals: new Nominals(build) };
}

/** Every demo build, in the order of their files. */
export const demoBuilds: readonly DemoBuild[] = await Promise.all(demoTexts.map(evaluated));
