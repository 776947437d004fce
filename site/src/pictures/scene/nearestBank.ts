import { bankTilts } from "@trialfit/mechanics";
import { contactAt, type Nominals } from "trialfit";

/** Angles that are looked at to find the bank that comes nearest. */
const LOOKS = 90;

/** Number of the bank whose rod comes nearest by a trace, 0 or 1. */
export function nearestBank(nominals: Nominals, trace: string): number {
  const tilts = bankTilts(nominals.size("block.bankAngle") ?? 0);
  const least = tilts.map((tilt) => {
    const at = contactAt(nominals, trace, [tilt]);
    if (at === undefined) return Number.POSITIVE_INFINITY;
    return Math.min(...Array.from({ length: LOOKS }, (_, i) => at((2 * Math.PI * i) / LOOKS).clearance));
  });
  return least.indexOf(Math.min(...least));
}
