import { useEffect, useRef } from "preact/hooks";

/** Unfolds everything below for the time of printing: paper cannot be clicked. */
export function useUnfoldedInPrint() {
  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let folded: readonly HTMLDetailsElement[] = [];
    const before = () => {
      folded = [...(root.current?.querySelectorAll<HTMLDetailsElement>("details:not([open])") ?? [])];
      for (const one of folded) one.open = true;
    };
    const after = () => {
      for (const one of folded) one.open = false;
    };
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    return () => {
      removeEventListener("beforeprint", before);
      removeEventListener("afterprint", after);
    };
  }, []);
  return root;
}
