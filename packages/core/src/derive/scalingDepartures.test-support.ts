/** The base quantities whose unit can be changed, in the order of a unit's dimensions. */
export const bases = ["length", "mass", "time", "temperature"] as const;
export type Base = (typeof bases)[number];

/** Why a computation does not follow a change of units by itself: it has a number with a unit in it. */
export interface Departure {
  /** What that number is. */
  readonly because: string;
  /** Powers of m, kg, s and K of the product of such numbers in the result; absent: none is a factor of the whole. */
  readonly constant?: readonly [number, number, number, number];
  /** True where the number acts on part of the result, so that any share of its powers may show. */
  readonly partly?: true;
  /** How far a power may be off, where such numbers are terms beside greater ones; a wrong unit is off by 1/2 or more. */
  readonly within?: number;
  /** Bases in which nothing can be told. */
  readonly except?: readonly Base[];
}

const MODULUS = [-1, 1, -2, 0] as const;
const DENSITY = [-3, 1, 0, 0] as const;

const steel: Departure = { because: "Young's modulus of steel", constant: MODULUS };
const partlySteel: Departure = {
  because: "Young's modulus of one of two metals",
  constant: MODULUS,
  partly: true,
};
const hotFit: Departure = {
  ...partlySteel,
  because: "Young's modulus of one of two metals, and 20 °C, from which they expand",
  except: ["temperature"],
};
const perThousand: Departure = { because: "a thousand revolutions a minute", constant: [0, 0, -1, 0] };
const strengthTable: Departure = { because: "a table over temperature", except: ["temperature"] };
const cycle: Departure = {
  because:
    "the wall heat of the cylinder model, fitted in metres, bar and kelvin; it moves the pressure a little",
  within: 0.03,
};

/** The quantities without a formula that keep numbers with a unit of their own. It is checked to be just these. */
export const departures: Readonly<Record<string, Departure>> = {
  bobweightNeeded: { because: "4 g of oil, a small part of the whole", within: 0.01 },
  mainBearingCrushPressure: steel,
  mainBearingCrushStress: steel,
  rodBearingCrushPressure: steel,
  rodBearingCrushStress: steel,
  mainBearingFitPressure: partlySteel,
  rodBearingFitPressure: partlySteel,
  bushFitPressure: partlySteel,
  mainBearingFitPressureHot: hotFit,
  rodBearingFitPressureHot: hotFit,
  hubFitPressure: steel,
  pushrodReserve: steel,
  camNosePressure: { because: "root of Young's modulus of steel", constant: [-0.5, 0.5, -1, 0] },
  pinMassBySize: { because: "density of steel, below the line", constant: [3, -1, 0, 0] },
  topRingLiftPressure: { because: "density of a steel or iron ring", constant: DENSITY },
  windagePower: { because: "viscosity of the oil mist to the fifth root", constant: [-0.2, 0.2, -0.2, 0] },
  oilAlarmPerThousand: perThousand,
  oilPressurePerSpeed: perThousand,
  dwellAtTopDeadCentre: {
    because: "half a millimetre below top dead centre, which goes in with its root",
    constant: [0.5, 0, 0, 0],
    within: 0.01,
  },
  frictionBySpeed: {
    because: "a polynomial in thousands of revolutions a minute that gives bar",
    constant: [-1, 1, 0, 0],
    except: ["time"],
  },
  ambientAirDensity: {
    because: "gas constant of dry air below the line; the vapour's pressure follows from its temperature",
    constant: [-2, 0, 2, 1],
    within: 0.05,
    except: ["temperature"],
  },
  dryAirPressure: {
    because: "the pressure of saturated vapour, which follows from its temperature",
    within: 0.1,
    except: ["temperature"],
  },
  densityAltitude: { because: "the standard atmosphere, a table of height", except: ["length", "mass"] },
  oilViscosity: { because: "95 °C in Vogel's equation", except: ["temperature"] },
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
};
