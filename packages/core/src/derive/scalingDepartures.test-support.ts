/** The base quantities whose unit can be changed, in the order of a unit's dimensions. */
export const bases = ["length", "mass", "time", "temperature"] as const;
export type Base = (typeof bases)[number];

/** Why a computation does not follow a change of units by itself: it has a number with a unit in it. */
export interface Departure {
  /** What that number is. */
  readonly because: string;
  /** Powers of m, kg, s and K of the product of such numbers in the result; absent: none is a factor of the whole. */
  readonly constant?: readonly [number, number, number, number];
  /** How far a power may be off, where such numbers are terms beside greater ones; a wrong unit is off by 1/2 or more. */
  readonly within?: number;
  /** Bases in which nothing can be told. */
  readonly except?: readonly Base[];
}

const MODULUS = [-1, 1, -2, 0] as const;

const steel: Departure = { because: "Young's modulus of steel", constant: MODULUS };
const strengthTable: Departure = { because: "a table over temperature", except: ["temperature"] };
const cycle: Departure = {
  because:
    "the wall heat of the cylinder model, fitted in metres, bar and kelvin; it moves the pressure a little",
  within: 0.03,
};

const friction: Departure = {
  because:
    "the friction of the engine by speed, fitted in bar and revolutions a minute; it comes off what the gas does",
  within: 0.25,
};

/** The quantities without a formula that keep numbers with a unit of their own. It is checked to be just these. */
export const departures: Readonly<Record<string, Departure>> = {
  pushrodReserve: steel,
  dwellAtTopDeadCentre: {
    because: "half a millimetre below top dead centre, which goes in with its root",
    constant: [0.5, 0, 0, 0],
    within: 0.01,
  },
  bossReserve: strengthTable,
  pinBendingUseHot: strengthTable,
  crownFatigueHot: strengthTable,
  crownYieldHot: strengthTable,
  rodBoltHotStrengthUse: strengthTable,
  rodFatigueHot: strengthTable,
  rodYieldHot: strengthTable,
  knockIntegral: {
    because: "the delay of self-ignition, fitted in atmospheres, kelvin and milliseconds",
    except: bases,
  },
  mainBearingGreatestLoad: cycle,
  mainBearingLeastFilm: cycle,
  mainBearingMeanLoad: cycle,
  rodBearingLeastFilm: cycle,
  greatestCrankpinLoad: cycle,
  greatestCylinderTorque: cycle,
  meanCrankpinLoad: cycle,
  meanCylinderTorque: cycle,
  greatestSideThrust: cycle,
  sideThrustAngle: cycle,
  greatestRodCompression: cycle,
  peakPressureAngle: cycle,
  peakPressureEstimate: cycle,
  mainCapPull: cycle,
  mainCapSlipOverCycle: cycle,
  estimatedGreatestTorque: friction,
  estimatedGreatestTorqueSpeed: friction,
};
