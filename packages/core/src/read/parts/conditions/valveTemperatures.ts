import { temperatureField } from "../../temperatureField.ts";

/** Temperatures of the valves and their guides. */
export const valveTemperatures = {
  inletValveHeadTemperature: temperatureField({
    label: "Inlet valve head temperature",
    symbol: "T_vi",
    help: "Mean temperature of the inlet valve’s head at full load.",
    usual: ["400 degC ± 100", "inlet valve heads run at about 300 to 500 °C (from memory)"],
    range: ["50 degC", "800 degC"],
    tolerance: "50",
  }),
  exhaustValveHeadTemperature: temperatureField({
    label: "Exhaust valve head temperature",
    symbol: "T_ve",
    help: "Mean temperature of the exhaust valve’s head at full load.",
    usual: ["720 degC ± 80", "exhaust valve heads run at about 640 to 800 °C (from memory)"],
    range: ["50 degC", "1000 degC"],
    tolerance: "50",
  }),
  inletStemTemperature: temperatureField({
    label: "Inlet valve stem temperature",
    symbol: "T_sti",
    help: "Temperature of the inlet valve’s stem inside the guide, at its hotter end, at full load.",
    usual: ["150 degC ± 40", "inlet stems run at about 110 to 190 °C in the guide (from memory)"],
  }),
  exhaustStemTemperature: temperatureField({
    label: "Exhaust valve stem temperature",
    symbol: "T_ste",
    help: "Temperature of the exhaust valve’s stem inside the guide, at its hotter end, at full load.",
    usual: ["280 degC ± 70", "exhaust stems run at about 210 to 350 °C at the guide’s hot end (from memory)"],
  }),
  inletGuideTemperature: temperatureField({
    label: "Inlet guide temperature",
    symbol: "T_gdi",
    help: "Temperature of the inlet valve’s guide at its hotter end, at full load.",
    usual: ["120 degC ± 30", "inlet guides run a little above the head about them (from memory)"],
  }),
  exhaustGuideTemperature: temperatureField({
    label: "Exhaust guide temperature",
    symbol: "T_gde",
    help: "Temperature of the exhaust valve’s guide at its hotter end, at full load.",
    usual: ["190 degC ± 50", "exhaust guides run well above the head about them (from memory)"],
  }),
} as const;
