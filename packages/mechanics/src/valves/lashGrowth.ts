import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "../stack/ThermalPart.ts";

/**
 * Change of the valve lash from cold to hot in a pushrod engine: head and block carry the rocker away from the
 * camshaft while the pushrod grows after it, times the rocker ratio. The growth of the valve stem is left out;
 * it closes an exhaust valve's lash by 0.02 to 0.06 mm (common practice). The temperatures are assumed: good
 * for direction and comparison, not for setting the lash.
 * @param input.head its part of the length from camshaft to rocker; size [m] less than the pushrod's
 * @param input.pushrod its length, expansion and temperature rise
 * @param input.blockExpansion coefficient of the block, which makes up the rest of the length [1/K]
 * @param input.blockTemperatureRise [K], either sign
 * @param input.rockerRatio valve lift over pushrod lift [-], > 0
 * @returns change of lash at the valve [m], + grows
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry, one uniform temperature per part.
 */
export function lashGrowth(input: {
  head: ThermalPart;
  pushrod: ThermalPart;
  blockExpansion: number;
  blockTemperatureRise: number;
  rockerRatio: number;
}): number {
  const { head, pushrod, blockExpansion, blockTemperatureRise, rockerRatio } = input;
  requireAll(finite, { blockExpansion, blockTemperatureRise });
  requireAll(positive, { rockerRatio });
  const [headGrowth, pushrodGrowth] = [thermalGrowth(head), thermalGrowth(pushrod)];
  requireThat(
    head.size < pushrod.size,
    "head.size",
    head.size,
    `less than the length of the pushrod ${pushrod.size}`,
  );
  const blockGrowth = thermalGrowth({
    size: pushrod.size - head.size,
    expansion: blockExpansion,
    temperatureRise: blockTemperatureRise,
  });
  return (headGrowth + blockGrowth - pushrodGrowth) * rockerRatio;
}
