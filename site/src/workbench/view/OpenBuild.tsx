import type { DemoText } from "../protocol.ts";
import type { BenchActions } from "../state/useBench.ts";

interface Props {
  readonly demos: readonly DemoText[];
  readonly actions: BenchActions;
}

/** A build with nothing in it but its name. */
export const NEW_BUILD = 'trialfit: "1"\nname: A new build\n';

/** Puts a demo, a file or an empty build on the bench. */
export function OpenBuild({ demos, actions }: Props) {
  const openFile = async (file: File | undefined) => {
    if (file !== undefined) actions.open(await file.text(), file.name, `opening ${file.name}`);
  };
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
      <label class="file-button">
        Open a file…
        <input
          type="file"
          accept=".yaml,.yml,.json"
          onChange={(event) => {
            openFile(event.currentTarget.files?.[0]);
            event.currentTarget.value = "";
          }}
        />
      </label>
    </>
  );
}
