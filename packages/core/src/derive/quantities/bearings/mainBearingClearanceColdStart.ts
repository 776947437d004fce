import { hotBearingClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { STEEL } from "../../../tables/usualMetals.ts";
import { bearings, housingExpansions, type Numbers, type Paths } from "../../bearings/Bearing.ts";
import { quantity } from "../../Quantity.ts";

const grows = housingExpansions(bearings.main);
const rise = `(T_cs - ${REFERENCE_TEMPERATURE})`;

export const mainBearingClearanceColdStart = quantity({
  id: "mainBearingClearanceColdStart",
  name: "Main bearing clearance at the coldest start",
  symbol: "C_mc",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "Oil clearance of the main bearing, square to the joint, with block, cap, shells and crankshaft all as cold as at the coldest start. An aluminium crankcase shrinks onto a steel crankshaft.",
  inputs: {
    D_Hm: "block.mainHousingBore",
    ...grows.paths,
    t_s: "mainBearing.wall",
    D_m: "crankshaft.mainJournalDiameter",
    alpha_c: "crankshaft.expansion",
    T_cs: "conditions.coldStartTemperature",
  } as Paths,
  formula: `D_Hm * (1 + ${grows.formula} * ${rise}) - 2 * t_s * (1 + ${STEEL.expansionText} * ${rise}) - D_m * (1 + alpha_c * ${rise})`,
  compute: (n: Numbers) => {
    const temperatureRise = n.T_cs! - REFERENCE_TEMPERATURE;
    return hotBearingClearance({
      housing: { size: n.D_Hm!, expansion: grows.of(n), temperatureRise },
      shellWall: { size: n.t_s!, expansion: STEEL.expansion, temperatureRise },
      journal: { size: n.D_m!, expansion: n.alpha_c!, temperatureRise },
    });
  },
  shape: "monotone",
  valid: "all parts at one temperature; half of the bore in the block, half in the cap",
  sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the shells’ backing" }],
  examples: [
    {
      given: {
        D_Hm: "70 mm",
        ...grows.example("16.75e-6 1/K"),
        t_s: "2.47 mm",
        D_m: "65 mm",
        alpha_c: "12e-6 1/K",
        T_cs: "-10 degC",
      },
      expect: "0.050 mm",
    },
  ],
  display: true,
});
