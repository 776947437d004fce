import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** Elastic constants of one of two bodies in contact. */
export interface ElasticBody {
  /** E [Pa], > 0 */
  readonly elasticModulus: number;
  /** Poisson's ratio [-], from 0 up to 0.5 */
  readonly poissonRatio: number;
}

function compliance({ elasticModulus, poissonRatio }: ElasticBody): number {
  requireAll(positive, { elasticModulus });
  requireAll({ atLeast: 0, atMost: 0.5 }, { poissonRatio });
  return (1 - poissonRatio ** 2) / elasticModulus;
}

/**
 * Greatest pressure of the line contact between cam and follower:
 * p = sqrt(F E* (1 / R_1 + 1 / R_2) / (pi b)) with 1 / E* = (1 - nu_1^2) / E_1 + (1 - nu_2^2) / E_2, and the
 * half width of the contact 2 F / (pi b p). Edges, crowning and misalignment raise it.
 * @param input.force between cam and follower [N], > 0
 * @param input.width of the line b [m], > 0
 * @param input.camRadius radius of curvature of the cam at the contact, least at the nose R_1 [m], > 0
 * @param input.followerCurvature 1 / R_2 [1/m], >= 0: 0 for a flat follower, one over the radius of a roller
 * @param input.cam elastic constants
 * @param input.follower elastic constants
 * @returns pressure [Pa] and half width [m] across the line
 * @throws RangeError when a value is out of range
 *
 * Source: Hertz; Johnson, Contact Mechanics.
 */
export function camContactPressure(input: {
  force: number;
  width: number;
  camRadius: number;
  followerCurvature: number;
  cam: ElasticBody;
  follower: ElasticBody;
}): { pressure: number; halfWidth: number } {
  const { force, width, camRadius, followerCurvature, cam, follower } = input;
  requireAll(positive, { force, width, camRadius });
  requireAll(notNegative, { followerCurvature });
  const modulus = 1 / (compliance(cam) + compliance(follower));
  const lineLoad = force / width;
  const pressure = Math.sqrt((lineLoad * modulus * (1 / camRadius + followerCurvature)) / Math.PI);
  return { pressure, halfWidth: (2 * lineLoad) / (Math.PI * pressure) };
}
