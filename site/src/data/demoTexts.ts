import { readBuildText } from "trialfit";
import type { DemoText } from "../workbench/protocol.ts";
import { demoFiles } from "./demoFiles.ts";

/** The invented demo builds as they are read, not judged, in the order of their files. */
export const demoTexts: readonly DemoText[] = [...demoFiles].map(([id, text]) => {
  const { name, values } = readBuildText(text, `${id}.yaml`);
  const story = values.get("story");
  return { id, name, story: story?.kind === "text" ? story.value : "", text };
});
