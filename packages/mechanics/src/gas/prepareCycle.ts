import { bottomDeadCentre, topDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonTravelBy } from "../kinematics/pistonTravel.ts";
import { turnTable } from "../kinematics/turnTable.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import { burntShareOver } from "./burntShare.ts";
import { type ClosedCycle, requireClosedCycle } from "./ClosedCycle.ts";
import { boreFactor, burningSpeedFactor, motoredGasSpeed } from "./wallHeatTransfer.ts";
import { lossByLogOfVolume } from "./wallLoss.ts";

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

/** Volumes at the nodes and in the middle of each step [m3]: those of whole and half steps from a table of the turn. */
function volumesOf({ cylinder, step }: ClosedCycle, angles: Float64Array) {
  const volumeAt = cylinderVolume(cylinder);
  const steps = angles.length - 1;
  const volumes = new Float64Array(angles.length);
  const middles = new Float64Array(steps);
  const middleOf = (i: number) => (angles[i]! + angles[i + 1]!) / 2;
  const table = turnTable(step / 2);
  if (table === undefined || steps < 3) {
    for (let i = 0; i <= steps; i++) volumes[i] = volumeAt(angles[i]!);
    for (let i = 0; i < steps; i++) middles[i] = volumeAt(middleOf(i));
    return { volumes, middles };
  }
  const { count, sines, cosines } = table;
  const { crank, bore, clearanceVolume } = cylinder;
  const area = boreArea(bore);
  const travel = pistonTravelBy(crank);
  const volumeOf = (half: number) => {
    const place = half - count * Math.floor(half / count);
    return clearanceVolume + area * travel(sines[place]!, cosines[place]!);
  };
  const first = 2 * Math.round(angles[1]! / step);
  for (let i = 1; i < steps; i++) {
    volumes[i] = volumeOf(first + 2 * (i - 1));
    if (i < steps - 1) middles[i] = volumeOf(first + 2 * i - 1);
  }
  for (const end of [0, steps]) volumes[end] = volumeAt(angles[end]!);
  for (const end of [0, steps - 1]) middles[end] = volumeAt(middleOf(end));
  return { volumes, middles };
}

/** @throws RangeError when the cycle is not one */
export function prepareCycle(cycle: ClosedCycle): PreparedCycle {
  requireClosedCycle(cycle);
  const { cylinder, charge, burning, freshRatio, burntRatio, walls } = cycle;
  const { bore, clearanceVolume, crank } = cylinder;
  const angles = nodesOf(cycle);
  const steps = angles.length - 1;
  const { volumes, middles: middleVolumes } = volumesOf(cycle, angles);
  const shares = angles.map(burntShareOver(burning));
  const ratios = shares.map((share) => freshRatio - 1 + (burntRatio - freshRatio) * share);
  const each = () => new Float64Array(steps);
  const [firstHalf, secondHalf, motored, wallFactors] = [each(), each(), each(), each()];
  const stroke = topDeadCentre(crank).height - bottomDeadCentre(crank).height;
  const speed = walls?.angularSpeed ?? 0;
  const reference = { ...charge, volume: volumes[0]! };
  const massConstant = (charge.pressure * volumes[0]!) / charge.temperature;
  const ofBore = boreFactor(bore);
  const logOfMass = Math.log(massConstant);
  // Powers by logarithms: each volume is raised to several.
  const logOf = (volume: number) => Math.log(volume);
  const logs = volumes.map(logOf);
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
