import { notNegative, positive, requireAll, share } from "../check/requireAll.ts";
import type { ThreadGeometry } from "./threadGeometry.ts";
import { threadTorque } from "./torqueAndPreload.ts";

/** What of a thread's dimensions the stress of its core needs. */
export type ThreadCore = Pick<ThreadGeometry, "pitch" | "pitchDiameter" | "stressDiameter" | "stressArea">;

function requireThreadCore({ stressDiameter, stressArea }: ThreadCore): void {
  requireAll(positive, { stressDiameter, stressArea });
}

/**
 * Equivalent (von Mises) stress in the thread while the bolt is being tightened: tension on the stress area
 * and elastic torsion of a bar of the stress diameter. About half the torsion relaxes afterwards.
 * @param input.preload [N], >= 0
 * @param input.thread dimensions of the thread
 * @param input.threadFriction coefficient of friction in the thread [-], >= 0
 * @returns stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function tighteningStress(input: {
  preload: number;
  thread: ThreadCore;
  threadFriction: number;
}): number {
  const { preload, thread, threadFriction } = input;
  requireThreadCore(thread);
  const torsion = threadTorque({ ...thread, preload, threadFriction });
  const shear = torsion / ((Math.PI / 16) * thread.stressDiameter ** 3);
  return Math.hypot(preload / thread.stressArea, Math.sqrt(3) * shear);
}

/**
 * Preload at which tightening uses a given share of the yield strength. The torsion is taken as fully plastic
 * (section modulus pi d^3 / 12), as the tightening tables of VDI 2230 do, so at a share of 1 this is somewhat
 * above the preload at which {@link tighteningStress} first reaches yield at the surface.
 * @param input.thread dimensions of the thread
 * @param input.threadFriction coefficient of friction in the thread [-], >= 0
 * @param input.yieldStrength of the bolt [Pa], > 0
 * @param input.use share of the yield strength [-], 0 to 1; the tables use 0.9
 * @returns preload [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function preloadForYieldUse(input: {
  thread: ThreadCore;
  threadFriction: number;
  yieldStrength: number;
  use: number;
}): number {
  const { thread, threadFriction, yieldStrength, use } = input;
  requireThreadCore(thread);
  requireAll(positive, { yieldStrength });
  requireAll(share, { use });
  const torsionPerPreload = threadTorque({ ...thread, preload: 1, threadFriction });
  const shearPerPreload = torsionPerPreload / ((Math.PI / 12) * thread.stressDiameter ** 3);
  return (use * yieldStrength) / Math.hypot(1 / thread.stressArea, Math.sqrt(3) * shearPerPreload);
}

/**
 * Preload as a share of the yield load, tension alone.
 * @param input.preload [N], >= 0
 * @param input.area smallest section, stress area or shank [m2], > 0
 * @param input.yieldStrength of the bolt [Pa], > 0
 * @returns share [-]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function yieldUse(input: { preload: number; area: number; yieldStrength: number }): number {
  const { preload, area, yieldStrength } = input;
  requireAll(notNegative, { preload });
  requireAll(positive, { area, yieldStrength });
  return preload / (area * yieldStrength);
}
