import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Oil that the supply pressure pushes from a groove over the lands on both its sides, laminar:
 * Q = 2 R c^3 dp/(12 mu L') times the integral of (1 + e cos)^3 over the groove's arc, which lies about the
 * thickest film. For a full groove 2 pi D c^3 dp (1 + 1.5 e^2)/(12 mu L').
 * @param input.journalDiameter [m], > 0
 * @param input.radialClearance half the diametral clearance [m], > 0
 * @param input.supplyPressure in the groove above that about the bearing [Pa], >= 0
 * @param input.viscosity dynamic viscosity [Pa s], > 0
 * @param input.landLength land on each side of the groove [m], > 0
 * @param input.eccentricity offset of the journal over the radial clearance [-], 0 up to 1
 * @param input.arc of the groove [rad], above 0 and at most a full turn
 * @returns flow of both sides [m3/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, pressure-fed bearings, for the full groove; slot flow.
 */
export function grooveFlow(input: {
  journalDiameter: number;
  radialClearance: number;
  supplyPressure: number;
  viscosity: number;
  landLength: number;
  eccentricity: number;
  arc: number;
}): number {
  const { journalDiameter, radialClearance, supplyPressure, viscosity, landLength, eccentricity, arc } =
    input;
  requireAll(positive, { journalDiameter, radialClearance, viscosity, landLength });
  requireAll(notNegative, { supplyPressure });
  requireAll({ atLeast: 0, below: 1 }, { eccentricity });
  requireAll({ above: 0, atMost: 2 * Math.PI }, { arc });
  const half = arc / 2;
  const sine = Math.sin(half);
  const [first, second, third] = [2 * sine, half + sine * Math.cos(half), 2 * (sine - sine ** 3 / 3)];
  const films = arc + 3 * eccentricity * first + 3 * eccentricity ** 2 * second + eccentricity ** 3 * third;
  const slot = (journalDiameter * radialClearance ** 3 * supplyPressure) / (12 * viscosity * landLength);
  return slot * films;
}
