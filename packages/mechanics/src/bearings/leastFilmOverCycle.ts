import { finite, requireAll } from "../check/requireAll.ts";
import { bogackiShampine } from "./bogackiShampine.ts";
import { CYCLE, type CycleBearing, isClosed, mobilityScale, PRECISION, RUN_IN } from "./filmCycle.ts";
import { mobilityAt } from "./shortBearingMobility.ts";

/**
 * Least oil film of a bearing over a working cycle by the mobility method: the path of the journal in its
 * clearance, d(e)/dt = |F| (2c/D)^2/(mu L D) M + turning x e, until it closes. Starvation, tilt and the give of
 * housing and journal are left out, so the value is for comparison with others computed in the same way.
 * @param bearing the bearing, its load and its turning over two turns
 * @returns least film [m] and the crank angle [rad] where it lies, 0 up to 4 pi
 * @throws RangeError when a value is out of range
 *
 * Source: Booker's mobility method (from memory); Taylor, The Internal-Combustion Engine in Theory and Practice, for
 * the load.
 */
export function leastFilmOverCycle(bearing: CycleBearing): { film: number; angle: number } {
  const { journalDiameter, length, radialClearance, load, meanTurning } = bearing;
  const scale = mobilityScale(bearing);
  const lengthRatio = length / journalDiameter;

  const slope = (angle: number, x: number, y: number, into: Float64Array) => {
    const force = load(angle);
    const turning = meanTurning(angle);
    const size = Math.sqrt(force.x * force.x + force.y * force.y);
    requireAll(finite, { load: size, meanTurning: turning });
    into[0] = -turning * y;
    into[1] = turning * x;
    if (size === 0) return;
    const [ux, uy] = [force.x / size, force.y / size];
    // A trial step may overshoot the shell; its error then sends it back.
    const along = Math.min(x * ux + y * uy, 1 - Number.EPSILON);
    const mobility = mobilityAt(along, y * ux - x * uy, lengthRatio);
    into[0] += scale * size * (mobility.along * ux - mobility.across * uy);
    into[1] += scale * size * (mobility.along * uy + mobility.across * ux);
  };

  let [square, at] = [0, 0];
  const watch = (angle: number, atX: number, atY: number) => {
    const here = atX * atX + atY * atY;
    if (here > square) [square, at] = [here, angle];
  };
  let [x, y] = bogackiShampine(slope, { from: -RUN_IN, to: 0, x: 0, y: 0, ...PRECISION });
  for (let [cycles, closed] = [1, false]; !closed; cycles += 1) {
    const [fromX, fromY] = [x, y];
    [square, at] = [0, 0];
    [x, y] = bogackiShampine(slope, { from: 0, to: CYCLE, x, y, ...PRECISION }, watch);
    closed = isClosed(x - fromX, y - fromY, cycles);
  }
  return { film: radialClearance * (1 - Math.sqrt(square)), angle: at };
}
