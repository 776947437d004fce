import { notNegative, requireAll, requireThat } from "../check/requireAll.ts";
import { requireThread, type ThreadFriction } from "./torqueAndPreload.ts";

/** Cosine of the flank angle of a 60 degree thread. */
const FLANK = Math.cos(Math.PI / 6);

/**
 * Torque in the thread by the exact form of the wedge, F d2/2 (tan l + f')/(1 - f' tan l), with the lead angle l
 * and f' = mu / cos 30 deg. {@link threadTorque} adds the terms up, which is 0.3-1 % lower with engine threads.
 * @param input.preload [N], >= 0
 * @param input friction of the thread as in {@link ThreadFriction}
 * @returns torque [N m]
 * @throws RangeError when a value is out of range or the thread locks at any torque
 *
 * Source: Shigley's Mechanical Engineering Design (power screws, bolt tightening); ISO 16047 has the same form.
 */
export function wedgeThreadTorque(input: ThreadFriction & { readonly preload: number }): number {
  const { pitch, pitchDiameter, threadFriction, preload } = input;
  requireThread(input);
  requireAll(notNegative, { preload });
  const lead = pitch / (Math.PI * pitchDiameter);
  const friction = threadFriction / FLANK;
  requireThat(
    friction * lead < 1,
    "threadFriction",
    threadFriction,
    "a friction at which the thread still turns",
  );
  return ((preload * pitchDiameter) / 2) * ((lead + friction) / (1 - friction * lead));
}
