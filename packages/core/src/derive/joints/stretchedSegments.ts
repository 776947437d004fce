import type { BoltSegment } from "@trialfit/mechanics";

/** What a stretch gauge sees of a rod bolt: shank, free thread, and half a diameter of engaged thread. */
export function stretchedSegments(bolt: {
  l_sh: number;
  A_sh: number;
  l_th: number;
  d: number;
  A_s: number;
  E_s: number;
}): readonly BoltSegment[] {
  const { l_sh, A_sh, l_th, d, A_s, E_s } = bolt;
  return [
    { length: l_sh, area: A_sh, elasticModulus: E_s },
    { length: l_th + d / 2, area: A_s, elasticModulus: E_s },
  ];
}
