import { notNegative, positive, requireAll, share } from "../check/requireAll.ts";
import { gasForce } from "../loads/gasForce.ts";

/** The clamp of a cylinder head over one cylinder at peak pressure. */
export interface HeadClamp {
  /** fasteners whose clamp falls to this cylinder [-], > 0; a shared one counts as a half */
  readonly fasteners: number;
  /** preload of one fastener, the least of its scatter [N], >= 0 */
  readonly preload: number;
  /** gauge [Pa], > 0 */
  readonly peakPressure: number;
  /** diameter out to which the gas lifts the head, the fire ring's [m], > 0 */
  readonly sealDiameter: number;
}

function forces(head: HeadClamp): { clamp: number; lift: number } {
  const { fasteners, preload, peakPressure, sealDiameter } = head;
  requireAll(positive, { fasteners, peakPressure, sealDiameter });
  requireAll(notNegative, { preload });
  return {
    clamp: fasteners * preload,
    lift: gasForce({ cylinderPressure: peakPressure, casePressure: 0, bore: sealDiameter }),
  };
}

/**
 * Clamp of the head over the force of the gas that lifts it.
 * @param head fasteners, preload [N], peak pressure [Pa] and seal diameter [m]
 * @returns ratio [-]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function headClampRatio(head: HeadClamp): number {
  const { clamp, lift } = forces(head);
  return clamp / lift;
}

/**
 * Line load left on the fire ring at peak pressure.
 * @param input.clampShare share of the clamp that goes to the fire ring [-], 0 to 1; 0.4-0.8 (common
 * practice)
 * @param input fasteners, preload [N], peak pressure [Pa] and seal diameter [m] as in {@link HeadClamp}
 * @returns load per length of ring [N/m], <= 0 when the joint opens
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function fireRingLineLoad(input: HeadClamp & { readonly clampShare: number }): number {
  requireAll(share, { clampShare: input.clampShare });
  const { clamp, lift } = forces(input);
  return (input.clampShare * (clamp - lift)) / (Math.PI * input.sealDiameter);
}
