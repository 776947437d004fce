import { ruleFiles } from "@trialfit/rules";

const files = import.meta.glob<string>("../../../rules/*/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The texts of the rule files by id: what a person reads who wants to know exactly, or to dispute. */
export const ruleFileTexts: ReadonlyMap<string, string> = new Map(
  ruleFiles.map(({ id, system }) => {
    const text = files[`../../../rules/${system}/${id}.yaml`];
    if (text === undefined) throw new Error(`rules/${system}/${id}.yaml is not there`);
    return [id, text];
  }),
);
