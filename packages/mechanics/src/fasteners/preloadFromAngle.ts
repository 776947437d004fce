import { notNegative, requireAll } from "../check/requireAll.ts";
import { type JointCompliance, tighteningAngle } from "./joint.ts";

/**
 * Preload of a fastener that is turned on by an angle from a snug torque: what the torque gave, and the pitch of
 * the turn taken up by bolt and clamped parts. Only the first part rests on friction.
 * @param input.snugPreload that the snug torque gives [N], >= 0
 * @param input.angle turned from there [rad], >= 0
 * @param input compliances of bolt and clamped parts [m/N]
 * @param input.pitch [m], > 0
 * @returns preload [N]; below yield
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function preloadFromAngle(
  input: JointCompliance & { readonly snugPreload: number; readonly angle: number; readonly pitch: number },
): number {
  const { snugPreload, angle } = input;
  requireAll(notNegative, { snugPreload, angle });
  return snugPreload + angle / tighteningAngle({ ...input, preload: 1 });
}
