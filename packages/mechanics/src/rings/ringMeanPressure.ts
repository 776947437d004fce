import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Mean contact pressure of a ring on the bore from its own tension, 2 F_t / (B h).
 * @param input.tangentialForce force that closes the ring to the bore with a band round it [N], > 0
 * @param input.bore finished bore [m], > 0
 * @param input.ringHeight axial height of the running face [m], > 0
 * @returns pressure [Pa], without the gas pressure behind the ring
 * @throws RangeError when a value is not above zero
 *
 * Source: ISO 6621 terms; statics of a thin ring.
 */
export function ringMeanPressure(input: {
  tangentialForce: number;
  bore: number;
  ringHeight: number;
}): number {
  const { tangentialForce, bore, ringHeight } = input;
  requireAll(positive, { tangentialForce, bore, ringHeight });
  return (2 * tangentialForce) / (bore * ringHeight);
}

/**
 * Pressure difference across a ring that its own inertia can overcome. The ring lifts off its lower flank
 * when the pressure above it exceeds the pressure below it by less than this. Friction and twist are left
 * out.
 * @param input.ringHeight axial height [m], > 0
 * @param input.ringDensity [kg/m3], > 0
 * @param input.acceleration magnitude of the piston's acceleration [m/s2], > 0
 * @returns pressure difference [Pa]
 * @throws RangeError when a value is not above zero
 *
 * Source: force balance of the ring; Heywood, Internal Combustion Engine Fundamentals (discussed).
 */
export function ringLiftPressure(input: {
  ringHeight: number;
  ringDensity: number;
  acceleration: number;
}): number {
  const { ringHeight, ringDensity, acceleration } = input;
  requireAll(positive, { ringHeight, ringDensity, acceleration });
  return ringDensity * ringHeight * acceleration;
}
