import { eyeBendingStress, soderbergReserve } from "@trialfit/mechanics";

/** What the stress of the small end at overspeed needs. */
export const smallEndInputs = {
  m_p: "piston.mass",
  m_pin: "pistonPin.mass",
  m_rings: "ringSet.mass",
  a_o: "accelerationAtOverspeed",
  D_so: "connectingRod.smallEndOuterDiameter",
  D_bu: "connectingRod.bushOuterDiameter",
  b_se: "connectingRod.smallEndWidth",
  phi_s: "connectingRod.smallEndHeldAngle",
} as const;

export const smallEndGiven = {
  m_p: "330 g",
  m_pin: "116 g",
  m_rings: "18 g",
  a_o: "45930 m/s2",
  D_so: "33 mm",
  D_bu: "25 mm",
  b_se: "22 mm",
  phi_s: "115 deg",
} as const;

export const smallEndMethod =
  "Piston, pin and rings pull evenly on the upper half of the eye, which is an arch that the beam holds at the held angle (Castigliano, thin ring). Its forces stress each section as a curved beam (Winkler-Bach), from the top to the held angle.";

export const smallEndValid =
  "an estimate: one section all round; the bush is taken not to help, and the pin not to stiffen the eye; oil holes raise it two to three times where they lie";

export const smallEndSources = [
  { id: "shigley", where: "curved beams in bending" },
  { id: "timoshenko", where: "rings, from memory" },
  { id: "kolchin-demidov", where: "held angle and even pull, from memory" },
] as const;

type Numbers = Readonly<Record<keyof typeof smallEndInputs, number>>;

/** Greatest stress at the inside and outside of the eye by the pull at overspeed [Pa]. */
export function smallEndPull({ m_p, m_pin, m_rings, a_o, D_so, D_bu, b_se, phi_s }: Numbers) {
  return eyeBendingStress({
    force: (m_p + m_pin + m_rings) * a_o,
    section: { innerRadius: D_bu / 2, depth: (D_so - D_bu) / 2, width: b_se },
    pressure: "even",
    heldAngle: phi_s,
    lastAngle: phi_s,
  });
}

interface SideStress {
  readonly fit: number;
  readonly pull: number;
}

/** Stresses of the two sides of the eye: what the bush brings at all times, and what the pull adds [Pa]. */
export function smallEndSides(n: Numbers & { readonly sigma_bu: number }): readonly SideStress[] {
  const pull = smallEndPull(n);
  // Lamé: the hoop stress at the outside is the one at the bore less the pressure of the fit.
  const outside = (2 * n.D_bu ** 2) / (n.D_so ** 2 + n.D_bu ** 2);
  return [
    { fit: n.sigma_bu, pull: pull.inner },
    { fit: n.sigma_bu * outside, pull: pull.outer },
  ];
}

/** Fatigue reserve of the weaker side, whose pull comes and goes. */
export function smallEndFatigue(
  sides: readonly SideStress[],
  strength: { fatigueStrength: number; yieldStrength: number },
): number {
  return Math.min(
    ...sides.map(({ fit, pull }) => {
      const swing = Math.max(0, pull) / 2;
      return soderbergReserve({ amplitude: swing, mean: fit + swing, ...strength });
    }),
  );
}
