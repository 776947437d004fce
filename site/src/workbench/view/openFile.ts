import type { BenchActions } from "../state/BenchActions.ts";

/** Every build file says which version of the format it has. */
const isBuild = (text: string): boolean => /\btrialfit\b/.test(text);

/** Opens a file as a build; what is none is refused, and the build on the bench stays. */
export function openFile(actions: BenchActions, text: string, name: string): void {
  if (isBuild(text)) actions.open(text, name, `opening ${name}`);
  else
    actions.refuse(
      `${name} is no build file: the line trialfit: "1" is not in it. The build here stays as it is.`,
    );
}
