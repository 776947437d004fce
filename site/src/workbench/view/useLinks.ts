import { useEffect } from "preact/hooks";
import type { BenchActions } from "../state/BenchActions.ts";
import { hasLink, linkedText } from "../state/firstText.ts";

/** Said of a link that was cut or is none. */
export const LOST = "The link does not hold a build that can be read. What is on the bench stays as it was.";

/** Opens a build that is put into the address while the workbench is open. */
export function useLinks(actions: BenchActions): void {
  useEffect(() => {
    const take = async () => {
      if (!hasLink()) return;
      const text = await linkedText();
      if (text === undefined) actions.refuse(LOST);
      else actions.open(text, "build.yaml", "the link");
    };
    addEventListener("hashchange", take);
    return () => removeEventListener("hashchange", take);
  }, [actions]);
}
