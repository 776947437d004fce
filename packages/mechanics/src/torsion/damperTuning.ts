import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Best tuning of a damper ring on a rubber or spring, for one mode without damping of its own. The two fixed
 * points of the response are then equally high and the response is nearly level through them.
 * @param input.ringInertia of the damper's ring [kg m2], > 0
 * @param input.modalInertia of the mode at the damper [kg m2], > 0, without the ring
 * @param input.angularFrequency natural frequency of the mode without the ring [rad/s], > 0
 * @returns inertiaRatio m = J_ring/J_modal [-]; frequencyRatio f_d/f_1 = 1/(1 + m) [-]; dampingRatio
 * zeta = sqrt(3 m / (8 (1 + m)^3)) [-], damping over 2 J_ring omega_1 (not over the ring's own critical damping,
 * which is 1/(1 + m) of that); stiffness of the rubber [N m/rad]; damping of the rubber [N m s/rad]
 * @throws RangeError when a value is not above zero
 *
 * Source: Den Hartog, Mechanical Vibrations.
 */
export function damperTuning(input: {
  ringInertia: number;
  modalInertia: number;
  angularFrequency: number;
}): {
  inertiaRatio: number;
  frequencyRatio: number;
  dampingRatio: number;
  stiffness: number;
  damping: number;
} {
  const { ringInertia, modalInertia, angularFrequency } = input;
  requireAll(positive, { ringInertia, modalInertia, angularFrequency });
  const inertiaRatio = ringInertia / modalInertia;
  const frequencyRatio = 1 / (1 + inertiaRatio);
  const dampingRatio = Math.sqrt((3 * inertiaRatio * frequencyRatio ** 3) / 8);
  return {
    inertiaRatio,
    frequencyRatio,
    dampingRatio,
    stiffness: ringInertia * (frequencyRatio * angularFrequency) ** 2,
    damping: 2 * dampingRatio * ringInertia * angularFrequency,
  };
}
