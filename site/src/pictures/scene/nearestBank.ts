import { bankTilts } from "@trialfit/mechanics";
import { contactAt, type Nominals } from "trialfit";

/**
 * Number of the bank whose rod is nearest at an angle, 0 or 1: in a symmetrical block the two come equally near, but
 * at different angles.
 * @param trace id of a trace that follows the rod past something
 * @param angle from firing top dead centre [rad]
 */
export function nearestBank(nominals: Nominals, trace: string, angle: number): number {
  const gaps = bankTilts(nominals.size("block.bankAngle") ?? 0).map(
    (tilt) => contactAt(nominals, trace, [tilt])?.(angle).clearance ?? Number.POSITIVE_INFINITY,
  );
  return gaps.indexOf(Math.min(...gaps));
}
