import { dimension } from "../fields.ts";
import { part } from "../part.ts";
import { temperatureField } from "../temperatureField.ts";

/** Temperatures at which parts run, for hot clearances and gaps, and the air about the engine. */
export const conditions = part(
  {
    key: "conditions",
    id: "conditions",
    label: "Running conditions",
    help: "Temperatures at which the parts run.",
  },
  {
    topRingTemperature: temperatureField({
      label: "Top ring temperature",
      symbol: "T_r",
      help: "Temperature of the top ring at full load.",
      usual: ["225 degC ± 35", "top rings run at about 180 to 260 °C (from memory)"],
      range: ["50 degC", "450 degC"],
      tolerance: "30",
    }),
    cylinderTopTemperature: temperatureField({
      label: "Cylinder temperature at the top ring",
      symbol: "T_w",
      help: "Temperature of the cylinder wall where the top ring turns round.",
      usual: ["155 degC ± 25", "liquid-cooled walls run at about 130 to 180 °C at the top (from memory)"],
      range: ["30 degC", "350 degC"],
    }),
    blockTemperature: temperatureField({
      label: "Block temperature",
      symbol: "T_b",
      help: "Mean temperature of crankcase and cylinder block at full load.",
      usual: [
        "95 degC ± 10",
        "liquid-cooled crankcases run at about 85 to 105 °C at full load (from memory)",
      ],
    }),
    headTemperature: temperatureField({
      label: "Head temperature",
      symbol: "T_h",
      help: "Mean temperature of the cylinder head at full load.",
      usual: ["110 degC ± 20", "liquid-cooled heads run at about 90 to 130 °C on average (from memory)"],
    }),
    crankshaftTemperature: temperatureField({
      label: "Crankshaft temperature",
      symbol: "T_c",
      help: "Mean temperature of the crankshaft at full load.",
      usual: ["110 degC ± 15", "journals run a little above the oil, at about 95 to 125 °C (from memory)"],
    }),
    rodTemperature: temperatureField({
      label: "Rod temperature",
      symbol: "T_rod",
      help: "Mean temperature of the connecting rod at full load.",
      usual: ["120 degC ± 20", "rods run at about 100 to 140 °C on average (from memory)"],
    }),
    pistonTemperature: temperatureField({
      label: "Piston temperature",
      symbol: "T_p",
      help: "Mean temperature of the piston between pin and crown at full load.",
      usual: [
        "150 degC ± 30",
        "the piston between crown and pin runs at about 120 to 180 °C on average (from memory)",
      ],
    }),
    skirtTemperature: temperatureField({
      label: "Piston skirt temperature",
      symbol: "T_s",
      help: "Temperature of the piston skirt at the gauge point at full load.",
      usual: ["120 degC ± 20", "skirts run at about 100 to 140 °C at full load (from memory)"],
    }),
    crownTemperature: temperatureField({
      label: "Piston crown temperature",
      symbol: "T_cr",
      help: "Temperature of the crown where it is bent most, at its support, at full load.",
      usual: [
        "230 degC ± 30",
        "crowns run at about 200 to 260 °C at their support and hotter in the middle (from memory)",
      ],
      range: ["60 degC", "450 degC"],
      tolerance: "25",
    }),
    pinTemperature: temperatureField({
      label: "Piston pin temperature",
      symbol: "T_pin",
      help: "Temperature of the piston pin and its bosses at full load.",
      usual: ["150 degC ± 25", "pins run at about 125 to 175 °C at full load (from memory)"],
    }),
    pushrodTemperature: temperatureField({
      label: "Pushrod temperature",
      symbol: "T_pr",
      help: "Mean temperature of the pushrods at full load.",
      usual: ["95 degC ± 15", "pushrods run at about the temperature of the oil (from memory)"],
    }),
    ambientPressure: dimension(
      {
        label: "Ambient pressure",
        symbol: "p_a",
        unit: "bar",
        range: ["0.5 bar", "1.1 bar"],
        tolerance: "0.02",
        help: "Air pressure where the engine is used; about 0.011 bar less for every 100 m of height.",
        assumed: { value: "1.0 bar ± 0.03", because: "up to about 300 m above the sea (common practice)" },
      },
      "assumed",
    ),
    mistDensity: dimension(
      {
        label: "Density of the oil mist",
        symbol: "rho_m",
        unit: "kg/m3",
        range: ["1 kg/m3", "100 kg/m3"],
        help: "Density of air and oil about the crankshaft.",
        assumed: {
          value: "15 kg/m3 ± 10",
          because: "5 to 30 kg/m3 have been supposed; it is not known better (from memory)",
        },
      },
      "assumed",
    ),
    secondRingTemperature: temperatureField({
      label: "Second ring temperature",
      symbol: "T_r2",
      help: "Temperature of the second ring at full load.",
      usual: ["180 degC ± 30", "second rings run at about 150 to 210 °C (from memory)"],
      range: ["50 degC", "400 degC"],
      tolerance: "30",
    }),
    topLandTemperature: temperatureField({
      label: "Top land temperature",
      symbol: "T_tl",
      help: "Temperature of the piston at its top land at full load.",
      usual: ["260 degC ± 40", "top lands run at about 220 to 300 °C (from memory)"],
      range: ["50 degC", "450 degC"],
      tolerance: "30",
    }),
    ambientTemperature: temperatureField({
      label: "Ambient temperature",
      symbol: "T_a",
      help: "Temperature of the air that the engine draws in, at its filter.",
      usual: ["25 degC ± 10", "mild weather (common practice)"],
      range: ["-40 degC", "60 degC"],
      tolerance: "5",
    }),
    relativeHumidity: dimension(
      {
        label: "Relative humidity",
        symbol: "phi_a",
        unit: "%",
        range: ["0 %", "100 %"],
        tolerance: "10",
        help: "Water vapour in the ambient air, as a share of what it can hold.",
        assumed: { value: "50 % ± 30", because: "neither desert nor rain (common practice)" },
      },
      "assumed",
    ),
    shellTemperature: temperatureField({
      label: "Bearing shell temperature",
      symbol: "T_sh",
      help: "Mean temperature of main and rod bearing shells at full load.",
      usual: ["115 degC ± 15", "shells run between their housing and the oil in the film (from memory)"],
      range: ["-40 degC", "250 degC"],
      tolerance: "15",
    }),
    linerTemperature: temperatureField({
      label: "Liner temperature",
      symbol: "T_li",
      help: "Mean temperature of a dry liner at full load.",
      usual: ["110 degC ± 15", "dry liners run about 10 to 25 K above the block around them (from memory)"],
      range: ["-40 degC", "400 degC"],
      tolerance: "15",
    }),
    headFastenerTemperature: temperatureField({
      label: "Head fastener temperature",
      symbol: "T_hs",
      help: "Mean temperature of the head studs or bolts at full load.",
      usual: ["90 degC ± 15", "head studs run a little below the block (from memory)"],
      range: ["-40 degC", "300 degC"],
    }),
    crankingPressure: dimension({
      label: "Cranking pressure measured",
      symbol: "p_crm",
      unit: "bar",
      range: ["1 bar", "60 bar"],
      tolerance: "0.5",
      help: "Gauge pressure that a compression gauge reaches at the spark plug hole, throttle open, warm engine, good battery; the lowest cylinder.",
    }),
  },
);
