import { useEffect, useState } from "preact/hooks";

const WIDE = "(min-width: 64rem)";

/** Whether the form and the findings stand side by side. */
export function useWide(): boolean {
  const [wide, setWide] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const query = matchMedia(WIDE);
    const update = () => setWide(query.matches);
    query.addEventListener("change", update);
    return () => query.removeEventListener("change", update);
  }, []);
  return wide;
}
