import { hotBearingClearance } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import { type Bearing, COLD, type Numbers, type Paths, STEEL } from "./Bearing.ts";

/** Declares the oil clearance of a bearing when the engine is hot. */
export function clearanceHot(bearing: Bearing, expect: string) {
  const { prefix, word, part, index, journal, housing, expansion, temperature, around } = bearing;
  const [D, H, a, T] = [journal[0], housing[0], expansion[0], temperature[0]];
  return quantity({
    id: `${prefix}ClearanceHot`,
    name: `${word[0]!.toUpperCase()}${word.slice(1)} clearance, hot`,
    symbol: `C_${index}h`,
    unit: "mm",
    decimals: 3,
    system: "bearings",
    meaning: `Oil clearance of the ${word} at full load, ${around}, shells and journal each at their own temperature. An aluminium housing opens it, and thick cold oil meets the small one.`,
    inputs: {
      [H]: housing[1],
      [a]: expansion[1],
      [T]: temperature[1],
      t_s: `${part}.wall`,
      [D]: journal[1],
      alpha_c: "crankshaft.expansion",
      T_c: "conditions.crankshaftTemperature",
    } as Paths,
    formula: `${H} * (1 + ${a} * (${T} - 293.15)) - 2 * t_s * (1 + 12.0e-6 * (${T} - 293.15)) - ${D} * (1 + alpha_c * (T_c - 293.15))`,
    compute: (n: Numbers) =>
      hotBearingClearance({
        housing: { size: n[H]!, expansion: n[a]!, temperatureRise: n[T]! - COLD },
        shellWall: { size: n.t_s!, expansion: STEEL.expansion, temperatureRise: n[T]! - COLD },
        journal: { size: n[D]!, expansion: n.alpha_c!, temperatureRise: n.T_c! - COLD },
      }),
    shape: "monotone",
    valid: `one temperature a part; a housing of one metal: a steel or iron cap in an aluminium block holds its half back`,
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the shells’ backing" }],
    examples: [
      {
        given: {
          [H]: "70 mm",
          [a]: "16.75e-6 1/K",
          [T]: "100 degC",
          t_s: "2.47 mm",
          [D]: "65 mm",
          alpha_c: "12e-6 1/K",
          T_c: "110 degC",
        },
        expect,
      },
    ],
    display: true,
  });
}
