import { useState } from "preact/hooks";
import type { DemoText } from "../protocol.ts";
import type { BenchActions } from "../state/BenchActions.ts";
import { type KeptBuild, otherBuilds } from "../state/keptBuilds.ts";
import { BUILD_FILES, FileButton } from "./FileButton.tsx";
import { openFile } from "./openFile.ts";

interface Props {
  readonly demos: readonly DemoText[];
  readonly actions: BenchActions;
}

/** A build with nothing in it but its name. */
export const NEW_BUILD = 'trialfit: "1"\nname: A new build\n';

/** What a kept build is called, and when it was kept. */
function labelOf({ text, at }: KeptBuild): string {
  const name = /^name:\s*(.+)$/m.exec(text)?.[1] ?? /"name"\s*:\s*"([^"]+)"/.exec(text)?.[1] ?? "a build";
  const when = new Date(at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });
  return `${name.slice(0, 60)}, ${when}`;
}

/** Puts a demo, a file, an empty build or one that this browser keeps on the bench. */
export function OpenBuild({ demos, actions }: Props) {
  const keptNow = () => otherBuilds().filter(({ text }) => demos.every((demo) => demo.text !== text));
  const [kept, setKept] = useState(keptNow);
  const look = () => setKept(keptNow());
  return (
    <>
      <label>
        Open
        <select
          value=""
          onPointerEnter={look}
          onFocus={look}
          onChange={(event) => {
            const chosen = event.currentTarget.value;
            event.currentTarget.value = "";
            const demo = demos.find(({ id }) => id === chosen);
            if (demo !== undefined) actions.open(demo.text, `${demo.id}.yaml`, `opening ${demo.name}`);
            const before = kept.find(({ place }) => place === chosen);
            if (before !== undefined) actions.open(before.text, "build.yaml", "a build that was kept");
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
          {kept.length > 0 && (
            <optgroup label="Kept in this browser">
              {kept.map((one) => (
                <option key={one.place} value={one.place}>
                  {labelOf(one)}
                </option>
              ))}
            </optgroup>
          )}
        </select>
      </label>
      <FileButton
        accept={BUILD_FILES}
        take={(text, name) => openFile(actions, text, name)}
        refuse={actions.refuse}
      >
        Open a file…
      </FileButton>
    </>
  );
}
