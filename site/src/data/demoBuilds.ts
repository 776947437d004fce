import { type Build, evaluate, Nominals, type Report, readBuildText } from "trialfit";

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

const files = import.meta.glob<string>("../../../packages/core/demo/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

async function evaluated(path: string, text: string): Promise<DemoBuild> {
  const file = path.replace(/^.*\//, "");
  const build = readBuildText(text, file);
  const story = build.values.get("story");
  return {
    id: file.replace(/\.yaml$/, ""),
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
  Object.entries(files).map(([path, text]) => evaluated(path, text)),
);
