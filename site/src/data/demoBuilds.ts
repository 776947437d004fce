import { type Build, evaluate, Nominals, type Report, readBuildText } from "trialfit";
import { demoFiles } from "./demoFiles.ts";

/** An invented build, evaluated while the site is built. */
export interface DemoBuild {
  readonly id: string;
  readonly name: string;
  readonly story: string;
  readonly text: string;
  readonly build: Build;
  readonly report: Report;
  /** For pictures. */
  readonly nominals: Nominals;
}

async function evaluated(id: string, text: string): Promise<DemoBuild> {
  const build = readBuildText(text, `${id}.yaml`);
  const story = build.values.get("story");
  return {
    id,
    name: build.name,
    story: story?.kind === "text" ? story.value : "",
    text,
    build,
    report: await evaluate(build, { quantities: "all" }),
    nominals: new Nominals(build),
  };
}

/** Every demo build, in the order of their files. */
export const demoBuilds: readonly DemoBuild[] = await Promise.all(
  [...demoFiles].map(([id, text]) => evaluated(id, text)),
);
