import { requireAll } from "../check/requireAll.ts";
import { type FilmMesh, meshAround, usualFilmMesh } from "./filmMesh.ts";
import { filmPressures } from "./filmPressures.ts";
import { lengthRatios } from "./lengthRatios.ts";

/** What the oil film of a steadily loaded bearing does, freed of its size: the variables of Raimondi and Boyd. */
export interface FilmVariables {
  /** (R/c)^2 mu N / P [-], N in revolutions per second, P on the projected area */
  readonly sommerfeld: number;
  /** from the load line to the line of centres [rad] */
  readonly attitude: number;
  /** (R/c) f [-], f the friction force at the journal over the load */
  readonly friction: number;
  /** Q/(R c N L) [-], drawn into the film where it is thickest */
  readonly flow: number;
  /** share of that flow which leaves over the sides of the loaded film [-] */
  readonly sideFlowShare: number;
  /** unit load over the greatest film pressure [-] */
  readonly pressureRatio: number;
}

/** Weights of Simpson's rule over half the length, from the middle to the edge; they add up to 1. */
function simpson(cells: number): Float64Array {
  return Float64Array.from({ length: cells + 1 }, (_, j) => {
    const weight = j === 0 || j === cells ? 1 : j % 2 === 1 ? 4 : 2;
    return weight / (3 * cells);
  });
}

/**
 * Friction variable of a film that fills the clearance all round: Couette shear and the couple of the load about
 * the middle of the bearing, 2 pi^2 S / sqrt(1 - e^2) + (e/2) sin(attitude).
 * @param film.sommerfeld [-], > 0
 * @param film.attitude [rad]
 * @param film.eccentricity [-], 0 up to 1
 * @returns (R/c) f at the journal [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Hamrock, Fundamentals of Fluid Film Lubrication; reproduces the table of Raimondi and Boyd (test).
 */
export function frictionVariable(film: {
  sommerfeld: number;
  attitude: number;
  eccentricity: number;
}): number {
  const { sommerfeld, attitude, eccentricity } = film;
  requireAll({ above: 0 }, { sommerfeld });
  requireAll({}, { attitude });
  requireAll({ atLeast: 0, below: 1 }, { eccentricity });
  const couette = (2 * Math.PI ** 2 * sommerfeld) / Math.sqrt(1 - eccentricity ** 2);
  return couette + (eccentricity / 2) * Math.sin(attitude);
}

/**
 * Oil film of a steadily loaded plain bearing of finite length, all round, fed along the line where the film is
 * thickest: Reynolds' equation by finite volumes, pressures below that of the surroundings set to it, which
 * gives the film its end where the pressure and its slope vanish.
 * @param input.eccentricity offset of the journal over the radial clearance [-], above 0 and below 1
 * @param input.lengthRatio length over diameter [-], 0.1 to 2
 * @param mesh how finely the film is cut up
 * @returns the variables of the film
 * @throws RangeError when a value is out of range
 *
 * Source: Reynolds' equation, in Shigley's Mechanical Engineering Design; held to the table of A. A. Raimondi and
 * J. Boyd, ASLE Transactions 1 (1958), and to the short and the long bearing.
 */
export function reynoldsFilm(
  input: { eccentricity: number; lengthRatio: number },
  mesh: FilmMesh = usualFilmMesh,
): FilmVariables {
  const { eccentricity, lengthRatio } = input;
  requireAll({ above: 0, below: 1 }, { eccentricity });
  requireAll(lengthRatios, { lengthRatio });
  const around = meshAround(eccentricity, mesh.around);
  const { angles, faces, faceFilms } = around;
  const pressures = filmPressures(around, lengthRatio, mesh.along);
  const weights = simpson(mesh.along);
  const row = mesh.along + 1;
  let [against, across, greatest] = [0, 0, 0];
  // Flow that the pressure pushes back over the first face.
  let back = 0;
  // Flow over the face behind the last pressure, by place along the bearing.
  const leaving = new Float64Array(row).fill(faceFilms[0]!);
  for (let i = 1; i < mesh.around; i++) {
    const width = faces[i]! - faces[i - 1]!;
    let sum = 0;
    for (let j = 0; j < row; j++) {
      const pressure = pressures[i * row + j]!;
      sum += weights[j]! * pressure;
      greatest = Math.max(greatest, pressure);
      const film = faceFilms[i]!;
      if (pressure > 0) leaving[j] = film + (film ** 3 * pressure) / (angles[i + 1]! - angles[i]!);
    }
    if (i === 1) back = (faceFilms[0]! ** 3 * sum) / angles[1]!;
    against -= sum * Math.cos(angles[i]!) * width;
    across += sum * Math.sin(angles[i]!) * width;
  }
  const load = Math.hypot(against, across);
  const attitude = Math.atan2(across, against);
  const sommerfeld = 1 / (6 * Math.PI * load);
  // What enters over the first face and does not leave where the film ends has left at the sides.
  const enters = faceFilms[0]! - back;
  // On the edge itself there is no pressure to show where the film ends: it ends as beside it.
  leaving[mesh.along] = leaving[mesh.along - 1]!;
  const leaves = leaving.reduce((sum, flow, j) => sum + weights[j]! * flow, 0);
  return {
    sommerfeld,
    attitude,
    friction: frictionVariable({ sommerfeld, attitude, eccentricity }),
    flow: Math.PI * enters,
    sideFlowShare: 1 - leaves / enters,
    pressureRatio: load / (2 * greatest),
  };
}
