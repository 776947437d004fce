import type { ComponentChildren } from "preact";

interface Props {
  /** What the button says. */
  readonly children: ComponentChildren;
  readonly accept: string;
  readonly take: (text: string, name: string) => void;
}

/** What build files are called. */
export const BUILD_FILES = ".yaml,.yml,.json";

/** Chooses a file of this machine, and hands on what it says and what it is called. */
export function FileButton({ children, accept, take }: Props) {
  const open = async (file: File | undefined) => {
    if (file !== undefined) take(await file.text(), file.name);
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
