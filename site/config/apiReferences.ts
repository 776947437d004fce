import { createStarlightTypeDocPlugin } from "starlight-typedoc";

function reference(label: string, folder: string) {
  const [plugin, group] = createStarlightTypeDocPlugin();
  return {
    group,
    plugin: plugin({
      entryPoints: [`../packages/${folder}/src/index.ts`],
      tsconfig: `../packages/${folder}/tsconfig.json`,
      output: `api/${folder}`,
      sidebar: { label, collapsed: true },
      typeDoc: { disableSources: true, excludeInternal: true, readme: "none", skipErrorChecking: true },
    }),
  };
}

/** One API reference for each library that people use from code. */
export const apiReferences = [reference("trialfit", "core"), reference("@trialfit/mechanics", "mechanics")];
