import { housingExpansion } from "@trialfit/mechanics";

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
    hot: ["C_mh", "mainBearingClearanceHot"],
    load: ["F_mm", "mainBearingMeanLoad"],
    outside: ["D_Ho", "block.mainHousingOuterDiameter"],
    modulus: ["E_b", "block.modulus"],
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
    hot: ["C_rh", "rodBearingClearanceHot"],
    load: ["F_cm", "meanCrankpinLoad"],
    outside: ["D_ro", "connectingRod.bigEndOuterDiameter"],
    modulus: ["E_r", "connectingRod.modulus"],
    around: "the rod",
  },
} as const;

export type Bearing = (typeof bearings)[keyof typeof bearings];
export type Paths = Readonly<Record<string, string>>;
export type Numbers = Readonly<Record<string, number>>;

/** Poisson's ratio of rods and blocks: 0.26 to 0.33, which moves a pressure by about 1 %. Source: from memory. */
export const HOUSING_POISSON = 0.3;

/** Expansion of the main bearing caps, which hold half of the bore. */
const CAP = ["alpha_cap", "mainCap.expansion"] as const;

/** What the housing’s expansion square to its joint is made of: block and cap half and half, or the rod alone. */
export function housingExpansions({ part, expansion }: Bearing) {
  const all = part === "mainBearing" ? [expansion, CAP] : [expansion];
  const symbols = all.map(([symbol]) => symbol);
  return {
    paths: Object.fromEntries(all.map(([symbol, path]) => [symbol, path])) as Paths,
    /** The same value for each, as an example. */
    example: (value: string): Paths => Object.fromEntries(symbols.map((symbol) => [symbol, value])),
    formula: symbols.length === 1 ? symbols[0]! : `(${symbols.join(" + ")}) / 2`,
    of: (n: Numbers): number =>
      symbols.length === 1
        ? n[symbols[0]!]!
        : housingExpansion({ block: n[symbols[0]!]!, cap: n[symbols[1]!]! }),
  };
}

/** Name of a bearing at the head of a label. */
export const headed = ({ word }: Bearing) => `${word[0]!.toUpperCase()}${word.slice(1)}`;
