/** How finely a film is cut up. */
export interface FilmMesh {
  /** cells round the bearing, even */
  readonly around: number;
  /** cells over half its length, even */
  readonly along: number;
}

/** Right to about 0.3 % of the load up to an eccentricity of 0.99 (test). */
export const usualFilmMesh: FilmMesh = { around: 180, along: 16 };

/** Nodes round the bearing and the faces between them, from the thickest film once round. */
export interface MeshAround {
  readonly angles: Float64Array;
  /** film at the nodes over the radial clearance */
  readonly films: Float64Array;
  /** face k lies between nodes k and k + 1 */
  readonly faces: Float64Array;
  readonly faceFilms: Float64Array;
}

/**
 * Nodes evenly spaced in Sommerfeld's angle, tan(theta/2) = sqrt((1 + e)/(1 - e)) tan(gamma/2), which crowds them
 * where the film is thin.
 * @param eccentricity [-], 0 up to 1
 * @param cells how many round the bearing
 * @returns angles of the nodes and of the faces between them [rad], and the film at each over the clearance [-]
 * @throws never: unchecked, reynoldsFilm checks what it is given
 *
 * Source: Sommerfeld's substitution, from memory.
 */
export function meshAround(eccentricity: number, cells: number): MeshAround {
  const stretch = Math.sqrt((1 + eccentricity) / (1 - eccentricity));
  const angleAt = (place: number) => {
    // The share first: it is 1 exactly at the last node, where half of gamma past pi would read as -pi.
    const half = Math.PI * (place / cells);
    return 2 * Math.atan2(stretch * Math.sin(half), Math.cos(half));
  };
  const filmAt = (angle: number) => 1 + eccentricity * Math.cos(angle);
  const angles = Float64Array.from({ length: cells + 1 }, (_, i) => angleAt(i));
  const faces = Float64Array.from({ length: cells }, (_, i) => angleAt(i + 0.5));
  return { angles, faces, films: angles.map(filmAt), faceFilms: faces.map(filmAt) };
}
