/** A point of the connecting rod in the frame of the rod. */
export interface RodPoint {
  /** along the rod from the centre of the big end [m], + towards the piston pin */
  readonly u: number;
  /** across the rod from the line between its bores [m]; the half that is listed has v >= 0 */
  readonly v: number;
}

/** One listed point of half an outline, in order along the outline. */
export interface OutlineVertex extends RodPoint {
  /** radius [m] the corner at this vertex is rounded with; only between two straight edges */
  readonly cornerRadius?: number | undefined;
  /** radius [m] when the edge from the previous vertex to this one is an arc bulging away from the metal */
  readonly arcRadius?: number | undefined;
}

/** A straight part of the outline. */
export interface OutlineSegment {
  readonly kind: "segment";
  readonly from: RodPoint;
  readonly to: RodPoint;
}

/** A circular part of the outline; angles [rad] from +u towards +v, the sweep signed in travel. */
export interface OutlineArc {
  readonly kind: "arc";
  readonly centre: RodPoint;
  readonly radius: number;
  readonly startAngle: number;
  readonly sweepAngle: number;
}

export type OutlineElement = OutlineSegment | OutlineArc;

/** The closed outline of the big end and the lower beam, both sides, in order of travel. */
export interface RodOutline {
  readonly elements: readonly OutlineElement[];
}
