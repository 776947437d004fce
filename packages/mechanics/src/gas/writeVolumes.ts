import { pistonTravelBy } from "../kinematics/pistonTravel.ts";
import { turnTable } from "../kinematics/turnTable.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import type { ClosedCycle } from "./ClosedCycle.ts";

/** Volumes at the nodes and in the middle of each step [m3]: those of whole and half steps from a table of the turn. */
export function writeVolumes(
  { cylinder, step }: ClosedCycle,
  angles: Float64Array,
  volumes: Float64Array,
  middles: Float64Array,
): void {
  const volumeAt = cylinderVolume(cylinder);
  const steps = angles.length - 1;
  const middleOf = (i: number) => (angles[i]! + angles[i + 1]!) / 2;
  const table = turnTable(step / 2);
  if (table === undefined || steps < 3) {
    for (let i = 0; i <= steps; i++) volumes[i] = volumeAt(angles[i]!);
    for (let i = 0; i < steps; i++) middles[i] = volumeAt(middleOf(i));
    return;
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
}
