import { pistonToPiston } from "@trialfit/mechanics";

/** What the two pistons of one crankpin need: input name → where it comes from. */
export const pistonPairInputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  gamma: "block.bankAngle",
  s_bk: "block.bankStagger",
  h_s: "piston.skirtBelowPin",
  D: "piston.diameter",
} as const;

/** Their nearest approach. Lengths in metres, angles in radians. */
export function nearestPistons(n: Readonly<Record<keyof typeof pistonPairInputs, number>>) {
  return pistonToPiston({
    crank: { throwRadius: n.r, rodLength: n.l, pinLineOffset: n.e },
    bankAngle: n.gamma,
    bankStagger: n.s_bk,
    skirtDepth: n.h_s,
    skirtDiameter: n.D,
  });
}

export const pistonPairExample = {
  r: "45 mm",
  l: "152.4 mm",
  e: "0 mm",
  gamma: "90 deg",
  s_bk: "0 mm",
  h_s: "40 mm",
  D: "102.9 mm",
} as const;
