import { useEffect } from "preact/hooks";
import type { BenchActions } from "../state/BenchActions.ts";

/** Boxes that undo what was typed into them by themselves. */
const TYPED =
  "textarea, [contenteditable], input:not([type=range], [type=checkbox], [type=radio], [type=file])";

/** Outside of a box for text the usual keys do what the buttons Undo and Redo do. */
export function useUndoKeys(actions: BenchActions): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const { key, ctrlKey, metaKey, altKey, shiftKey, target } = event;
      if (!(ctrlKey || metaKey) || altKey || event.defaultPrevented) return;
      if (target instanceof Element && target.closest(TYPED) !== null) return;
      const letter = key.toLowerCase();
      if (letter !== "z" && letter !== "y") return;
      event.preventDefault();
      if (letter === "y" || shiftKey) actions.redo();
      else actions.undo();
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [actions]);
}
