import { finite, notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/** The volumes that stay above the piston at top dead centre [m3]. */
export interface ClearanceVolumes {
  /** combustion chamber in the head, valves and plug fitted, >= 0 */
  readonly chamber: number;
  /** net crown volume: + for a dish or pockets (adds room), - for a dome */
  readonly crown: number;
  /** opening of the compressed head gasket, >= 0 */
  readonly gasket: number;
  /** between crown plane and deck: + with the crown below the deck, - above it */
  readonly deck: number;
  /** crevice round the top land above the top ring, >= 0 */
  readonly topLand: number;
  /** plug thread, gauge passage and the like, either sign */
  readonly other: number;
}

function sumChecked(volumes: ClearanceVolumes): number {
  const { chamber, crown, gasket, deck, topLand, other } = volumes;
  requireAll(notNegative, { chamber, gasket, topLand });
  requireAll(finite, { crown, deck, other });
  return chamber + crown + gasket + deck + topLand + other;
}

/**
 * Clearance volume: everything left above the piston at top dead centre.
 * @param volumes the parts of it [m3], signs as in {@link ClearanceVolumes}
 * @returns clearance volume [m3], > 0
 * @throws RangeError when a part is out of range or the sum is not above zero
 *
 * Source: definition.
 */
export function clearanceVolume(volumes: ClearanceVolumes): number {
  const sum = sumChecked(volumes);
  requireThat(sum > 0, "clearance volume", sum, "a sum above 0");
  return sum;
}

/**
 * Crown volume that gives a wanted compression ratio.
 * @param input.sweptVolume swept volume of one cylinder [m3], > 0
 * @param input.compressionRatio wanted static ratio [-], > 1
 * @param input.chamber chamber volume [m3]
 * @param input.gasket gasket volume [m3]
 * @param input.deck deck volume [m3], + below the deck
 * @param input.topLand top land crevice [m3]
 * @param input.other other volumes [m3]
 * @returns crown volume [m3]: + dish, - dome
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function crownVolumeForRatio(
  input: Omit<ClearanceVolumes, "crown"> & { sweptVolume: number; compressionRatio: number },
): number {
  return clearanceVolumeForRatio(input) - sumChecked({ ...input, crown: 0 });
}

/**
 * Clearance volume that gives a wanted compression ratio, V_d / (ratio - 1).
 * @param input.sweptVolume swept volume of one cylinder [m3], > 0
 * @param input.compressionRatio wanted static ratio [-], > 1
 * @returns clearance volume [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function clearanceVolumeForRatio(input: { sweptVolume: number; compressionRatio: number }): number {
  const { sweptVolume, compressionRatio } = input;
  requireAll(positive, { sweptVolume });
  requireAll({ above: 1 }, { compressionRatio });
  return sweptVolume / (compressionRatio - 1);
}

/**
 * Extra crown volume that keeps the ratio when the stroke changes under the same deck, head and gasket.
 * @param input.bore finished bore [m], > 0
 * @param input.strokeChange new stroke minus old stroke [m], either sign
 * @param input.compressionRatio static ratio to keep [-], > 1
 * @returns change of crown volume [m3], + more dish
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function crownVolumeChangeForStroke(input: {
  bore: number;
  strokeChange: number;
  compressionRatio: number;
}): number {
  const { bore, strokeChange, compressionRatio } = input;
  requireAll(finite, { strokeChange });
  requireAll({ above: 1 }, { compressionRatio });
  return (boreArea(bore) * strokeChange) / (compressionRatio - 1);
}
