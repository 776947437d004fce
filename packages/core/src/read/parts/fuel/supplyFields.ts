import { choice, count, dimension } from "../../fields.ts";

/** A pressure across the injectors. */
const injection = (label: string, symbol: string, tolerance: string, help: string) =>
  dimension({ label, symbol, unit: "bar", range: ["0.5 bar", "400 bar"], tolerance, help });

/** How the fuel gets to the cylinders. */
export const supplyFields = {
  metering: choice({
    label: "Fuel metering",
    help: "What measures the fuel out to the air.",
    options: { injectors: "injectors that a control unit opens and shuts", carburettor: "carburettors" },
  }),
  injectors: count({
    label: "Number of injectors",
    symbol: "N_inj",
    help: "Of the whole engine, all that work at the power target.",
    least: 1,
    most: 36,
  }),
  injectorFlow: dimension({
    label: "Injector flow",
    symbol: "m_ir",
    unit: "g/s",
    range: ["0.3 g/s", "100 g/s"],
    tolerance: "3 %",
    help: "Fuel that one injector passes when it is held open, at its rated pressure, as mass of the fuel used.",
  }),
  injectorRatedPressure: injection(
    "Rated pressure of the injector",
    "p_ir",
    "0.02",
    "Pressure across the injector at which its flow is stated.",
  ),
  injectorPressure: injection(
    "Pressure across the injector",
    "p_i",
    "0.1",
    "Rail pressure less manifold pressure at the power target.",
  ),
  greatestDuty: dimension({
    label: "Greatest injector duty",
    symbol: "D_g",
    unit: "%",
    range: ["20 %", "100 %"],
    exact: "a limit that its maker or the builder sets, not a size that is measured",
    help: "Share of the time that an injector may be held open; the rest is needed to open and shut.",
    assumed: { value: "85 % ± 0", because: "80 to 90 % leave time to open and shut (common practice)" },
  }),
  pumpFlow: dimension({
    label: "Fuel pump flow",
    symbol: "m_fp",
    unit: "g/s",
    range: ["1 g/s", "3000 g/s"],
    tolerance: "5 %",
    help: "Fuel that the pumps deliver together at the rail pressure and the voltage of the power target, as mass of the fuel used.",
  }),
};
