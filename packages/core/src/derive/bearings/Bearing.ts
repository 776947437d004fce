/** What sets main and rod bearings apart: words, paths, and the symbols of what is shared between quantities. */
export const bearings = {
  main: {
    prefix: "mainBearing",
    word: "main bearing",
    part: "mainBearing",
    index: "m",
    journal: ["D_m", "crankshaft.mainJournalDiameter"],
    housing: ["D_Hm", "block.mainHousingBore"],
    expansion: ["alpha_b", "block.expansion"],
    temperature: ["T_b", "conditions.blockTemperature"],
    clearance: ["C_m", "mainBearingClearance"],
    around: "the block",
  },
  rod: {
    prefix: "rodBearing",
    word: "rod bearing",
    part: "rodBearing",
    index: "r",
    journal: ["D_p", "crankshaft.crankpinDiameter"],
    housing: ["D_Hr", "connectingRod.bigEndBore"],
    expansion: ["alpha_r", "connectingRod.expansion"],
    temperature: ["T_rod", "conditions.rodTemperature"],
    clearance: ["C_r", "rodBearingClearance"],
    around: "the rod",
  },
} as const;

export type Bearing = (typeof bearings)[keyof typeof bearings];
export type Paths = Readonly<Record<string, string>>;
export type Numbers = Readonly<Record<string, number>>;

/** Young's modulus [Pa] and expansion [1/K] of the shells' steel backing. Source: from memory. */
export const STEEL = { modulus: 206e9, expansion: 12.0e-6 } as const;
/** 20 °C, at which parts are measured [K]. */
export const COLD = 293.15;
