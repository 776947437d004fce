import type { MeshAround } from "./filmMesh.ts";

/** Change of a sweep over the greatest pressure below which the pressures have settled. */
const SETTLED = 1e-9;
/** Far more sweeps than any mesh has needed; the shortest bearings settle in a few dozen. */
const MOST_SWEEPS = 20_000;
/** Over-relaxation of point sweeps: near the best for meshes of this size. */
const RELAXATION = 1.85;

/**
 * Film pressures over 6 mu omega (R/c)^2: Reynolds' equation by finite volumes, point by point, each pressure that
 * would fall below that of the surroundings set to it (Christopherson).
 * @param mesh round the bearing
 * @param lengthRatio length over diameter [-], > 0
 * @param along cells over half the length
 * @returns pressures by node round the bearing, then from the middle to the edge
 * @throws RangeError when the pressures do not settle
 *
 * Source: D. G. Christopherson's method of setting negative pressures to zero (from memory).
 */
export function filmPressures(mesh: MeshAround, lengthRatio: number, along: number): Float64Array {
  const { angles, films, faces, faceFilms } = mesh;
  const cells = angles.length - 1;
  const row = along + 1;
  const pressures = new Float64Array((cells + 1) * row);
  const conductance = faceFilms.map((film, k) => film ** 3 / (angles[k + 1]! - angles[k]!));
  const sideways = (along / lengthRatio) ** 2;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let [change, greatest] = [0, 0];
    for (let i = 1; i < cells; i++) {
      const [before, after] = [conductance[i - 1]!, conductance[i]!];
      const side = sideways * films[i]! ** 3 * (faces[i]! - faces[i - 1]!);
      const source = faceFilms[i]! - faceFilms[i - 1]!;
      const total = before + after + 2 * side;
      for (let j = 0; j < along; j++) {
        const at = i * row + j;
        const inner = pressures[j === 0 ? at + 1 : at - 1]!;
        const wanted =
          (before * pressures[at - row]! +
            after * pressures[at + row]! +
            side * (inner + pressures[at + 1]!) -
            source) /
          total;
        const old = pressures[at]!;
        const next = Math.max(0, old + RELAXATION * (wanted - old));
        pressures[at] = next;
        change = Math.max(change, Math.abs(next - old));
        greatest = Math.max(greatest, next);
      }
    }
    if (change <= SETTLED * greatest) return pressures;
  }
  throw new RangeError(`pressures: found no rest in ${MOST_SWEEPS} sweeps, expected them to settle`);
}
