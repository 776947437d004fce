import { arraysOf } from "../check/arraysOf.ts";
import { bottomDeadCentre, topDeadCentre } from "../kinematics/deadCentres.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { burntShareOver } from "./burntShare.ts";
import { type ClosedCycle, requireClosedCycle } from "./ClosedCycle.ts";
import { boreFactor, burningSpeedFactor, motoredGasSpeed } from "./wallHeatTransfer.ts";
import { lossByLogOfVolume } from "./wallLoss.ts";
import { writeVolumes } from "./writeVolumes.ts";

/** Everything of a closed cycle that does not depend on the heat, one entry for each node or step. */
export interface PreparedCycle {
  /** crank angles of the nodes [rad]: inlet closing, the whole steps, exhaust opening */
  readonly angles: Float64Array;
  /** at the nodes [m3] */
  readonly volumes: Float64Array;
  /** in the middle of each step [m3] */
  readonly middleVolumes: Float64Array;
  /** share burnt at the nodes [-] */
  readonly shares: Float64Array;
  /** heat capacity ratio less one, at the nodes [-] */
  readonly ratios: Float64Array;
  /** pressure over pressure of the first and second half of each step, without heat [-] */
  readonly firstHalf: Float64Array;
  readonly secondHalf: Float64Array;
  /** pressure without burning, in the middle of each step [Pa] */
  readonly motored: Float64Array;
  /**
   * area of the walls in the middle of each step times time of the step times what the heat transfer takes of the bore
   * and of the volume
   */
  readonly wallFactors: Float64Array;
  /** mass times gas constant of the charge [J/K] */
  readonly massConstant: number;
  readonly wallTemperature: number | undefined;
  readonly motoredSpeed: number;
  readonly burningSpeed: number;
  readonly pressure: number;
  /** first node at or after the start, and first at or after the end of burning */
  readonly burningFrom: number;
  readonly burningTo: number;
}

/** Crank angles of the nodes: the two ends and every whole step between. */
function nodesOf({ inletClosing, exhaustOpening, step }: ClosedCycle): Float64Array {
  const [from, to] = [inletClosing - Math.PI, Math.PI - exhaustOpening];
  // Ends that fall on a whole step but for rounding make no step of their own.
  const first = Math.floor(from / step + 1e-9) + 1;
  const last = Math.ceil(to / step - 1e-9) - 1;
  const angles = new Float64Array(last - first + 3);
  angles[0] = from;
  for (let index = first; index <= last; index++) angles[index - first + 1] = index * step;
  angles[angles.length - 1] = to;
  return angles;
}

/** Head, crown and the cylinder wall uncovered at a volume [m2]; the chamber counts as flat. */
const wallArea = (volume: number, clearanceVolume: number, bore: number): number =>
  2 * boreArea(bore) + (4 * (volume - clearanceVolume)) / bore;

type Four = [Float64Array, Float64Array, Float64Array, Float64Array];

/** @throws RangeError when the cycle is not one */
export function prepareCycle(cycle: ClosedCycle): PreparedCycle {
  requireClosedCycle(cycle);
  const { cylinder, charge, burning, freshRatio, burntRatio, walls } = cycle;
  const { bore, clearanceVolume, crank } = cylinder;
  const angles = nodesOf(cycle);
  const steps = angles.length - 1;
  const [volumes, shares, ratios, logs] = arraysOf(4, angles.length) as Four;
  const [middleVolumes, ...ofSteps] = arraysOf(5, steps) as [Float64Array, ...Four];
  writeVolumes(cycle, angles, volumes, middleVolumes);
  const shareAt = burntShareOver(burning);
  for (let i = 0; i <= steps; i++) {
    shares[i] = shareAt(angles[i]!);
    ratios[i] = freshRatio - 1 + (burntRatio - freshRatio) * shares[i]!;
    // Powers by logarithms: each volume is raised to several.
    logs[i] = Math.log(volumes[i]!);
  }
  const [firstHalf, secondHalf, motored, wallFactors] = ofSteps;
  const stroke = topDeadCentre(crank).height - bottomDeadCentre(crank).height;
  const speed = walls?.angularSpeed ?? 0;
  const reference = { ...charge, volume: volumes[0]! };
  const massConstant = (charge.pressure * volumes[0]!) / charge.temperature;
  const ofBore = boreFactor(bore);
  const logOfMass = Math.log(massConstant);
  for (let i = 0; i < steps; i++) {
    const middle = middleVolumes[i]!;
    const log = Math.log(middle);
    firstHalf[i] = Math.exp((logs[i]! - log) * (ratios[i]! + 1));
    secondHalf[i] = Math.exp((log - logs[i + 1]!) * (ratios[i + 1]! + 1));
    if (walls === undefined) continue;
    motored[i] = charge.pressure * Math.exp((logs[0]! - log) * freshRatio);
    const time = (angles[i + 1]! - angles[i]!) / speed;
    wallFactors[i] =
      wallArea(middle, clearanceVolume, bore) * time * ofBore * lossByLogOfVolume(log - logOfMass);
  }
  const nodeFrom = (angle: number) => {
    const found = angles.findIndex((one) => one >= angle);
    return found < 0 ? steps : found;
  };
  return {
    angles,
    volumes,
    middleVolumes,
    shares,
    ratios,
    firstHalf,
    secondHalf,
    motored,
    wallFactors,
    massConstant,
    wallTemperature: walls?.temperature,
    motoredSpeed: motoredGasSpeed((stroke * speed) / Math.PI),
    burningSpeed: burningSpeedFactor({ sweptVolume: boreArea(bore) * stroke, reference }),
    pressure: charge.pressure,
    burningFrom: Math.max(0, nodeFrom(burning.start) - 1),
    burningTo: nodeFrom(burning.start + burning.duration),
  };
}
