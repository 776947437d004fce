import { notNegative, requireAll } from "../check/requireAll.ts";
import { filmColumn } from "./finiteFilm.ts";
import { type ShortBearing, shortBearingLoad, shortBearingLoadOver } from "./shortBearing.ts";
import { steadyFilm } from "./steadyFilm.ts";

/** How a bearing runs under a steady load. */
export interface RunningBearing {
  /** offset of the journal over the radial clearance [-], 0 up to 1 */
  readonly eccentricity: number;
  /** least thickness of the film [m] */
  readonly film: number;
  /** from the load line to the line of centres [rad] */
  readonly attitude: number;
  /** friction power at the journal [W] */
  readonly frictionPower: number;
  /** oil drawn into the film where it is thickest [m3/s] */
  readonly flow: number;
  /** oil that leaves over the sides of the loaded film [m3/s] */
  readonly sideFlow: number;
  /** greatest film pressure [Pa]; 0 without load */
  readonly peakPressure: number;
}

/** Bisections: the eccentricity is found to the last digits of a double. */
const BISECTIONS = 60;

/**
 * Load that a bearing of finite length carries at a given eccentricity: that of the short bearing by the share of
 * it that the solved films carry.
 * @param input.eccentricity [-], 0 up to 1
 * @param input the bearing as in {@link ShortBearing}; length over diameter 0.1 to 2
 * @returns load [N]
 * @throws RangeError when a value is out of range
 *
 * Source: Reynolds' equation, see `finiteFilm`.
 */
export function finiteBearingLoad(input: ShortBearing & { readonly eccentricity: number }): number {
  const share = filmColumn(input.length / input.journalDiameter, "loadShare");
  return shortBearingLoad(input) * share(input.eccentricity);
}

function eccentricityAt(load: number, bearing: ShortBearing): number {
  const share = filmColumn(bearing.length / bearing.journalDiameter, "loadShare");
  const shortLoad = shortBearingLoadOver(bearing);
  let [low, high] = [0, 1];
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2;
    if (middle === 1) break;
    if (shortLoad(middle) * share(middle) > load) high = middle;
    else low = middle;
  }
  return low;
}

/**
 * How a plain bearing of finite length runs under a steady load: eccentricity by bisection, the load rises with
 * it; film, friction, flow and pressure from the solved films. Above an eccentricity of 0.99 the shares of the
 * table are kept: there the film is thinner than any theory of smooth parallel parts is good for.
 * @param input.load steady load [N], >= 0; of an engine bearing the mean over the cycle, not the peak
 * @param input the bearing as in {@link ShortBearing}; length over diameter 0.1 to 2
 * @returns eccentricity, film, friction, flow, pressure
 * @throws RangeError when a value is out of range
 *
 * Source: Reynolds' equation, see `finiteFilm`; Shigley's Mechanical Engineering Design for the variables.
 */
export function finiteBearing(input: ShortBearing & { readonly load: number }): RunningBearing {
  const { load, viscosity, angularSpeed, journalDiameter, length, radialClearance } = input;
  requireAll(notNegative, { load });
  const eccentricity = eccentricityAt(load, input);
  const lengthRatio = length / journalDiameter;
  const radius = journalDiameter / 2;
  const column = (name: Parameters<typeof filmColumn>[1]) => filmColumn(lengthRatio, name)(eccentricity);
  const attitude = column("attitude");
  // In forces, not through the friction variable, so that an unloaded bearing is Petroff's.
  const couette =
    (2 * Math.PI * viscosity * angularSpeed * radius ** 2 * length) /
    (radialClearance * Math.sqrt(1 - eccentricity ** 2));
  const couple = (load * radialClearance * eccentricity * Math.sin(attitude)) / (2 * radius);
  const flow = (column("flow") * radius * radialClearance * length * angularSpeed) / (2 * Math.PI);
  return {
    eccentricity,
    film: steadyFilm({ radialClearance, eccentricity }),
    attitude,
    frictionPower: (couette + couple) * angularSpeed * radius,
    flow,
    sideFlow: flow * column("sideFlowShare"),
    peakPressure: load / (journalDiameter * length * column("pressureRatio")),
  };
}
