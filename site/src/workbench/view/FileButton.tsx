import type { ComponentChildren } from "preact";
import { readTextFile } from "./readTextFile.ts";

interface Props {
  /** What the button says. */
  readonly children: ComponentChildren;
  readonly accept: string;
  readonly take: (text: string, name: string) => void;
  /** Told why a file cannot be taken. */
  readonly refuse: (because: string) => void;
}

/** What build files are called. */
export const BUILD_FILES = ".yaml,.yml,.json";

/** Chooses a file of this machine, and hands on what it says and what it is called. */
export function FileButton({ children, accept, take, refuse }: Props) {
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    const read = await readTextFile(file);
    if ("refused" in read) refuse(read.refused);
    else take(read.text, file.name);
  };
  return (
    <label class="file-button">
      {children}
      <input
        type="file"
        accept={accept}
        onChange={(event) => {
          open(event.currentTarget.files?.[0]);
          // So that the same file can be chosen again.
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}
