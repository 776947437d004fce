import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** The friction of a screw in its thread. */
export interface ThreadFriction {
  /** pitch [m], > 0 */
  readonly pitch: number;
  /** pitch diameter d2 [m], > 0 */
  readonly pitchDiameter: number;
  /** coefficient of friction in the thread, measured with the lubricant used [-], >= 0 */
  readonly threadFriction: number;
}

/** The friction of a screw in its thread and under its head. */
export interface TighteningFriction extends ThreadFriction {
  /** coefficient of friction under the head or nut, measured with the lubricant used [-], >= 0 */
  readonly headFriction: number;
  /** mean diameter of the face that turns [m], > 0 */
  readonly headFrictionDiameter: number;
}

/**
 * Checks the sizes and the friction of a thread.
 * @param thread pitch and pitch diameter [m], and friction [-]
 * @throws RangeError when a size is not above zero or the friction is negative
 *
 * Source: definition.
 */
export function requireThread({ pitch, pitchDiameter, threadFriction }: ThreadFriction): void {
  requireAll(positive, { pitch, pitchDiameter });
  requireAll(notNegative, { threadFriction });
}

function threadArm(thread: ThreadFriction): number {
  requireThread(thread);
  const { pitch, pitchDiameter, threadFriction } = thread;
  return pitch / (2 * Math.PI) + (threadFriction * pitchDiameter) / (2 * Math.cos(Math.PI / 6));
}

function tighteningArm(friction: TighteningFriction): number {
  const { headFriction, headFrictionDiameter } = friction;
  requireAll(notNegative, { headFriction });
  requireAll(positive, { headFrictionDiameter });
  return threadArm(friction) + (headFriction * headFrictionDiameter) / 2;
}

/**
 * Preload that a tightening torque gives,
 * F = T / (P / (2 pi) + mu_t d2 / (2 cos 30 deg) + mu_h D_km / 2). The friction decides: one figure for all
 * lubricants is the commonest way to a loose or a stretched bolt. The maker's tightening data outrank it.
 * @param input.torque tightening torque [N m], >= 0
 * @param input friction of thread and head as in {@link TighteningFriction}
 * @returns preload [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1; ISO 16047.
 */
export function preloadFromTorque(input: TighteningFriction & { readonly torque: number }): number {
  requireAll(notNegative, { torque: input.torque });
  return input.torque / tighteningArm(input);
}

/**
 * Tightening torque that gives a preload; the inverse of {@link preloadFromTorque}.
 * @param input.preload [N], >= 0
 * @param input friction of thread and head as in {@link TighteningFriction}
 * @returns torque [N m]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1; ISO 16047.
 */
export function torqueForPreload(input: TighteningFriction & { readonly preload: number }): number {
  requireAll(notNegative, { preload: input.preload });
  return input.preload * tighteningArm(input);
}

/**
 * Part of the tightening torque that twists the bolt's shank: pitch and thread friction, without the head.
 * @param input.preload [N], >= 0
 * @param input friction of the thread as in {@link ThreadFriction}
 * @returns torque [N m]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function threadTorque(input: ThreadFriction & { readonly preload: number }): number {
  requireAll(notNegative, { preload: input.preload });
  return input.preload * threadArm(input);
}

/**
 * Nut factor K = T / (F d), which collects all friction in one number.
 * @param input.torque [N m], > 0
 * @param input.preload [N], > 0
 * @param input.majorDiameter nominal diameter [m], > 0
 * @returns nut factor [-]
 * @throws RangeError when a value is not above zero
 *
 * Source: common practice.
 */
export function nutFactor(input: { torque: number; preload: number; majorDiameter: number }): number {
  const { torque, preload, majorDiameter } = input;
  requireAll(positive, { torque, preload, majorDiameter });
  return torque / (preload * majorDiameter);
}
