import { useEffect, useState } from "preact/hooks";

/**
 * How many of a long list's pieces to draw: one at first and one more in each turn, so that what is typed or tapped
 * between them is not kept waiting.
 * @param whole draw all of them at once, as for paper
 */
export function useGrowing(pieces: number, whole: boolean): number {
  const [drawn, setDrawn] = useState(1);
  useEffect(() => {
    if (whole || drawn >= pieces) return;
    const turn = setTimeout(() => setDrawn(drawn + 1));
    return () => clearTimeout(turn);
  }, [drawn, pieces, whole]);
  return whole ? pieces : drawn;
}
