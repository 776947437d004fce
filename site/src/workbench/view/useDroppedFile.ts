import { useEffect, useRef } from "preact/hooks";
import type { BenchActions } from "../state/BenchActions.ts";
import { openFile } from "./openFile.ts";
import { readTextFile } from "./readTextFile.ts";

const isBox = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest("input, textarea, select") !== null;

/**
 * Takes a build file that is dropped on the page, or pasted outside of a box; of a filled measurement sheet (CSV) the
 * readings.
 * @param onSheet shows what came of a sheet
 */
export function useDroppedFile(actions: BenchActions, onSheet: () => void): void {
  const show = useRef(onSheet);
  show.current = onSheet;
  useEffect(() => {
    const open = async (file: File) => {
      const read = await readTextFile(file);
      if ("refused" in read) actions.refuse(read.refused);
      else if (!/\.csv$/i.test(file.name)) openFile(actions, read.text, file.name);
      else {
        actions.sheet(read.text, file.name);
        show.current();
      }
    };
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      open(file);
    };
    const paste = (event: ClipboardEvent) => {
      if (isBox(event.target)) return;
      const file = event.clipboardData?.files[0];
      const text = event.clipboardData?.getData("text/plain") ?? "";
      if (file !== undefined) open(file);
      else if (/\btrialfit\b/.test(text)) actions.open(text, "build.yaml", "pasting a build");
    };
    addEventListener("dragover", over);
    addEventListener("drop", drop);
    addEventListener("paste", paste);
    return () => {
      removeEventListener("dragover", over);
      removeEventListener("drop", drop);
      removeEventListener("paste", paste);
    };
  }, [actions]);
}
