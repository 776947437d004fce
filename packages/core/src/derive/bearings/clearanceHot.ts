import { hotBearingClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../tables/referenceTemperature.ts";
import { STEEL } from "../../tables/usualMetals.ts";
import { quantity } from "../Quantity.ts";
import { type Bearing, headed, housingExpansions, type Numbers, type Paths } from "./Bearing.ts";

/**
 * Declares the oil clearance of a bearing when the engine is hot. The housing of a main bearing is half block, half
 * cap, which may be of unlike metals.
 */
export function clearanceHot(bearing: Bearing, expect: string) {
  const { prefix, word, part, index, journal, housing, temperature, around } = bearing;
  const [D, H, T] = [journal[0], housing[0], temperature[0]];
  const grows = housingExpansions(bearing);
  const hasCap = part === "mainBearing";
  return quantity({
    id: `${prefix}ClearanceHot`,
    name: `${headed(bearing)} clearance, hot`,
    symbol: `C_${index}h`,
    unit: "mm",
    decimals: 3,
    system: "bearings",
    meaning: `Oil clearance of the ${word} at full load, square to the joint, ${around}, shells and journal each at their own temperature. An aluminium housing opens it, and thick cold oil meets the small one.`,
    inputs: {
      [H]: housing[1],
      ...grows.paths,
      [T]: temperature[1],
      t_s: `${part}.wall`,
      [D]: journal[1],
      alpha_c: "crankshaft.expansion",
      T_c: "conditions.crankshaftTemperature",
    } as Paths,
    formula: `${H} * (1 + ${grows.formula} * (${T} - ${REFERENCE_TEMPERATURE})) - 2 * t_s * (1 + ${STEEL.expansionText} * (${T} - ${REFERENCE_TEMPERATURE})) - ${D} * (1 + alpha_c * (T_c - ${REFERENCE_TEMPERATURE}))`,
    compute: (n: Numbers) =>
      hotBearingClearance({
        housing: {
          size: n[H]!,
          expansion: grows.of(n),
          temperatureRise: n[T]! - REFERENCE_TEMPERATURE,
        },
        shellWall: {
          size: n.t_s!,
          expansion: STEEL.expansion,
          temperatureRise: n[T]! - REFERENCE_TEMPERATURE,
        },
        journal: { size: n[D]!, expansion: n.alpha_c!, temperatureRise: n.T_c! - REFERENCE_TEMPERATURE },
      }),
    shape: "monotone",
    valid: `one temperature a part${hasCap ? "; half of the bore in the block, half in the cap: along the joint it follows the block alone and goes oval by the difference" : ""}`,
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the shells’ backing" }],
    examples: [
      {
        given: {
          [H]: "70 mm",
          ...grows.example("16.75e-6 1/K"),
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
