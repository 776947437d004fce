import { greatestSquishVelocity } from "@trialfit/mechanics";

/** What the flow out of the squish band needs: input name → where it comes from. */
export const squishBandInputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  A: "boreArea",
  A_ch: "cylinderHead.chamberArea",
  L_e: "cylinderHead.squishEdgeLength",
  q: "squishGap",
  V_c: "clearanceVolume",
  n: "targets.speed",
} as const;

/** The greatest flow out of the band before top dead centre. SI. */
export function greatestSquish(numbers: Readonly<Record<keyof typeof squishBandInputs, number>>) {
  const { r, l, e, A, A_ch, L_e, q, V_c, n } = numbers;
  return greatestSquishVelocity({
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    pistonArea: A,
    bandArea: A - A_ch,
    edgeLength: L_e,
    gap: q,
    clearanceVolume: V_c,
    angularSpeed: n,
  });
}

/** Invented sizes for examples. */
export const squishBandExample = {
  r: "47 mm",
  l: "144.5 mm",
  e: "0 mm",
  A: "58.77 cm2",
  A_ch: "38.2 cm2",
  L_e: "120 mm",
  q: "1.0 mm",
  V_c: "60 cm3",
  n: "7000 rpm",
} as const;
