import { finite, requireAll } from "../check/requireAll.ts";

/**
 * How the inlet flange of a head moves from its manifold when deck or head is cut, or a gasket changes: the head comes
 * down by m along the cylinder, so the gap square to the flange opens by m cos(beta) and the ports move by m sin(beta)
 * along it.
 * @param input.lowered m, how much nearer to the crankshaft the head comes [m]; - when a thicker gasket lifts it
 * @param input.flangeAngle beta, between the cylinder axis away from the crankshaft and the direction in which the
 * flange faces, out of the head [rad]
 * @returns gap [m], + when it opens, - when the flange presses on the manifold; ports [m], + towards the crankshaft
 * @throws RangeError when a value is not finite
 *
 * Source: plane geometry.
 */
export function manifoldShift(input: { lowered: number; flangeAngle: number }): {
  gap: number;
  ports: number;
} {
  const { lowered, flangeAngle } = input;
  requireAll(finite, { lowered, flangeAngle });
  return { gap: lowered * Math.cos(flangeAngle), ports: lowered * Math.sin(flangeAngle) };
}
