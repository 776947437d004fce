/** The valve at one crank angle. */
export interface LiftState {
  /** lift along the valve's axis [m], 0 on the seat */
  readonly lift: number;
  /** dL/dtheta [m/rad of crank], + while it opens */
  readonly slope: number;
  /** d2L/dtheta2 [m/rad2 of crank], - over the nose */
  readonly curvature: number;
}

/**
 * Lift of one valve over the four-stroke cycle, as a function of the crank angle [rad]. The angle is 0 at
 * overlap top dead centre with the throw parallel to the cylinder, so an inlet centre lies at + and an exhaust
 * centre at -; it repeats every 4 pi.
 */
export interface LiftCurve {
  readonly at: (angle: number) => LiftState;
}
