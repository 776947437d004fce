import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Travel left before the coils of a valve spring touch at full lift: c = h_i - L_max - h_c. For nested springs
 * inner and outer count separately. A compressed valve spring stores enough energy to injure.
 * @param input.installedHeight with the valve shut h_i [m], > 0
 * @param input.greatestLift at the valve L_max [m], >= 0
 * @param input.solidHeight all coils touching h_c [m], > 0
 * @returns margin [m], - when the spring goes solid before full lift
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function coilBindMargin(input: {
  installedHeight: number;
  greatestLift: number;
  solidHeight: number;
}): number {
  const { installedHeight, greatestLift, solidHeight } = input;
  requireAll(positive, { installedHeight, solidHeight });
  requireAll(notNegative, { greatestLift });
  return installedHeight - greatestLift - solidHeight;
}
