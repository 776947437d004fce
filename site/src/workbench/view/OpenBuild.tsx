import type { DemoText } from "../protocol.ts";
import type { BenchActions } from "../state/useBench.ts";
import { BUILD_FILES, FileButton } from "./FileButton.tsx";

interface Props {
  readonly demos: readonly DemoText[];
  readonly actions: BenchActions;
}

/** A build with nothing in it but its name. */
export const NEW_BUILD = 'trialfit: "1"\nname: A new build\n';

/** Puts a demo, a file or an empty build on the bench. */
export function OpenBuild({ demos, actions }: Props) {
  return (
    <>
      <label>
        Open
        <select
          value=""
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            event.currentTarget.value = "";
            const demo = demos.find(({ id }) => id === chosen);
            if (demo !== undefined) actions.open(demo.text, `${demo.id}.yaml`, `opening ${demo.name}`);
            if (chosen === "new") actions.open(NEW_BUILD, "build.yaml", "a new build");
          }}
        >
          <option value="">a build…</option>
          {demos.map(({ id, name }) => (
            <option key={id} value={id}>
              {name} (invented)
            </option>
          ))}
          <option value="new">an empty build</option>
        </select>
      </label>
      <FileButton accept={BUILD_FILES} take={(text, name) => actions.open(text, name, `opening ${name}`)}>
        Open a file…
      </FileButton>
    </>
  );
}
