import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";
import { sumpFields } from "./oil/sumpFields.ts";

/**
 * Dynamic viscosity at 100 °C of each grade: the middle of the kinematic viscosity that SAE J300 allows, and half its
 * width, by a density of 800 kg/m3.
 */
const at100 = {
  "20": "6.5 mPa s ± 1.0",
  "30": "8.7 mPa s ± 1.3",
  "40": "11.5 mPa s ± 1.5",
  "50": "15.3 mPa s ± 2.3",
  "60": "19.2 mPa s ± 1.7",
} as const;

/** High-shear viscosity at 150 °C that oils of each grade have; SAE J300 sets only the least. */
const highShear = {
  "20": "2.8 mPa s ± 0.2",
  "30": "3.2 mPa s ± 0.3",
  "40": "3.9 mPa s ± 0.4",
  "50": "4.5 mPa s ± 0.7",
  "60": "5.3 mPa s ± 0.9",
} as const;

const byGrade = (values: Readonly<Record<string, string>>, because: string) => ({
  byChoice: "oil.grade",
  values: Object.fromEntries(Object.entries(values).map(([grade, value]) => [grade, { value, because }])),
});

/** The oil and its pump. */
export const oil = part(
  { key: "oil", id: "oil", label: "Oil", help: "The oil, its pressure and its pump." },
  {
    grade: choice({
      label: "Oil grade, hot",
      help: "The grade when hot: the second number of a multigrade, 50 of a 10W-50.",
      options: { "20": "SAE 20", "30": "SAE 30", "40": "SAE 40", "50": "SAE 50", "60": "SAE 60" },
    }),
    viscosity100: dimension({
      label: "Viscosity at 100 °C",
      symbol: "mu_100",
      unit: "mPa s",
      range: ["2 mPa s", "40 mPa s"],
      tolerance: "3 %",
      help: "Dynamic viscosity at 100 °C from the oil’s sheet: kinematic viscosity × density.",
      assumed: byGrade(at100, "the middle of what SAE J300 allows for the grade, by 800 kg/m3"),
    }),
    highShearViscosity: dimension({
      label: "High-shear viscosity at 150 °C",
      symbol: "mu_hs",
      unit: "mPa s",
      range: ["1 mPa s", "12 mPa s"],
      tolerance: "3 %",
      help: "High-temperature high-shear viscosity at 150 °C from the oil’s sheet.",
      assumed: byGrade(highShear, "usual for oils of the grade (from memory); SAE J300 sets only the least"),
    }),
    zinc: dimension({
      label: "Zinc or phosphorus in the oil",
      symbol: "x_Zn",
      unit: "ppm",
      range: ["0 ppm", "5000 ppm"],
      tolerance: "50",
      help: "Mass share of zinc or of phosphorus, the lesser, from the oil’s sheet: both come from the additive that protects rubbing faces.",
    }),
    filmTemperature: dimension({
      label: "Film temperature",
      symbol: "T_f",
      unit: "degC",
      range: ["20 degC", "250 degC"],
      tolerance: "15",
      help: "Mean temperature of the oil in the bearings at full load.",
      assumed: {
        value: "130 degC ± 15",
        because: "films run 20 to 40 K above the sump, at about 115 to 145 °C (from memory)",
      },
    }),
    density: dimension({
      label: "Oil density, hot",
      symbol: "rho_o",
      unit: "kg/m3",
      range: ["650 kg/m3", "1050 kg/m3"],
      tolerance: "2 %",
      help: "Density at the temperature in the bearings.",
      assumed: {
        value: "800 kg/m3 ± 30",
        because: "hot engine oil has about 770 to 830 kg/m3 (from memory)",
      },
    }),
    heatCapacity: dimension({
      label: "Heat capacity of the oil",
      symbol: "c_o",
      unit: "J/(kg K)",
      range: ["1500 J/(kg K)", "3000 J/(kg K)"],
      tolerance: "5 %",
      help: "Heat that a kilogram takes for each kelvin.",
      assumed: {
        value: "2100 J/(kg K) ± 150",
        because: "hot mineral oils take about 2000 to 2250 J/(kg K) (from memory)",
      },
    }),
    pressure: dimension({
      label: "Oil pressure at speed",
      symbol: "p_o",
      unit: "bar",
      range: ["0.3 bar", "15 bar"],
      tolerance: "0.3",
      help: "Pressure in the main gallery, hot, at the highest speed, above that of the crankcase.",
    }),
    pumpDisplacement: dimension({
      label: "Pump displacement",
      symbol: "V_pu",
      unit: "cm3",
      range: ["1 cm3", "200 cm3"],
      tolerance: "3 %",
      help: "Oil that the pump moves in one of its turns.",
    }),
    pumpRatio: dimension({
      label: "Pump speed ratio",
      symbol: "i_pu",
      unit: "1",
      range: ["0.2", "3"],
      exact: "numbers of teeth give it",
      help: "Turns of the pump for one of the crankshaft.",
    }),
    pumpEfficiency: dimension({
      label: "Pump volumetric efficiency",
      symbol: "eta_pu",
      unit: "%",
      range: ["30 %", "100 %"],
      tolerance: "5",
      help: "Oil delivered over oil displaced, hot, at pressure.",
      assumed: { value: "80 % ± 8", because: "hot gear pumps deliver about 72 to 88 % (from memory)" },
    }),
    ...sumpFields,
  },
);
