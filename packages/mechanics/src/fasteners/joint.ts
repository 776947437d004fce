import { finite, notNegative, positive, requireAll, share } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "../stack/ThermalPart.ts";

/** The springs of a bolted joint. */
export interface JointCompliance {
  /** elastic compliance of the bolt [m/N], > 0 */
  readonly boltCompliance: number;
  /** elastic compliance of the clamped parts [m/N], >= 0; 0 for rigid parts */
  readonly clampedCompliance: number;
}

function total({ boltCompliance, clampedCompliance }: JointCompliance): number {
  requireAll(positive, { boltCompliance });
  requireAll(notNegative, { clampedCompliance });
  return boltCompliance + clampedCompliance;
}

/**
 * Load factor Phi = n delta_c / (delta_b + delta_c): the share of an outside load that the bolt feels. The
 * rest unloads the joint.
 * @param input compliances of bolt and clamped parts [m/N]
 * @param input.introduction n, where the load enters [-], 0 to 1; 1 under head and nut, 0.3-0.7 in most
 * joints
 * @returns load factor [-]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function loadFactor(input: JointCompliance & { readonly introduction: number }): number {
  requireAll(share, { introduction: input.introduction });
  return (input.introduction * input.clampedCompliance) / total(input);
}

/**
 * Force in the bolt under an outside load, F_v + Phi F_A, while the joint stays shut.
 * @param input.preload [N], >= 0
 * @param input.loadFactor Phi [-], 0 to 1
 * @param input.externalLoad on this bolt [N], + opens the joint
 * @returns force [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function boltServiceLoad(input: {
  preload: number;
  loadFactor: number;
  externalLoad: number;
}): number {
  const { preload, externalLoad } = input;
  requireAll(notNegative, { preload });
  requireAll(share, { loadFactor: input.loadFactor });
  requireAll(finite, { externalLoad });
  return preload + input.loadFactor * externalLoad;
}

/**
 * Angle from snug to preload, 2 pi F (delta_b + delta_c) / P.
 * @param input.preload gained after the snug torque [N], >= 0
 * @param input compliances of bolt and clamped parts [m/N]
 * @param input.pitch [m], > 0
 * @returns angle [rad]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function tighteningAngle(
  input: JointCompliance & { readonly preload: number; readonly pitch: number },
): number {
  const { preload, pitch } = input;
  requireAll(notNegative, { preload });
  requireAll(positive, { pitch });
  return (2 * Math.PI * preload * total(input)) / pitch;
}

/**
 * Change of preload with temperature: what the clamped parts grow more than the bolt, over the joint's
 * compliance.
 * @param input.clamped lengths clamped, expansions and temperature rises
 * @param input.bolt lengths of the bolt inside the grip, expansions and temperature rises
 * @param input compliances of bolt and clamped parts [m/N]
 * @returns change [N], + when the bolt gets tighter
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function thermalPreloadChange(
  input: JointCompliance & {
    readonly clamped: readonly ThermalPart[];
    readonly bolt: readonly ThermalPart[];
  },
): number {
  const growth = (parts: readonly ThermalPart[]) => parts.reduce((sum, part) => sum + thermalGrowth(part), 0);
  return (growth(input.clamped) - growth(input.bolt)) / total(input);
}

/**
 * Preload lost when the surfaces of a joint settle.
 * @param input.embedding settling of all surfaces together [m], >= 0; 3-11 um by roughness and load (VDI
 * 2230-1)
 * @param input compliances of bolt and clamped parts [m/N]
 * @returns loss [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function embeddingLoss(input: JointCompliance & { readonly embedding: number }): number {
  requireAll(notNegative, { embedding: input.embedding });
  return input.embedding / total(input);
}
