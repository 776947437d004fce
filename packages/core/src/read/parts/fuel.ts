import type { FieldDefault } from "../FieldSpec.ts";
import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** Default of a property by the fuel: value and what it is the usual value of. */
const byFuel = (values: Readonly<Record<string, readonly [value: string, of: string]>>): FieldDefault => ({
  byChoice: "fuel.kind",
  values: Object.fromEntries(
    Object.entries(values).map(([kind, [value, of]]) => [kind, { value, because: `${of} (from memory)` }]),
  ),
});

/** One of the two octane numbers of a fuel. */
const octane = (name: "Research" | "Motor", symbol: string, help: string) =>
  dimension({
    label: `${name} octane number`,
    symbol,
    unit: "1",
    range: ["60", "130"],
    tolerance: "1",
    help: `${name} octane number ${help}`,
  });

/** A pressure across the injectors. */
const injection = (label: string, symbol: string, tolerance: string, help: string) =>
  dimension({ label, symbol, unit: "bar", range: ["0.5 bar", "400 bar"], tolerance, help });

/** The fuel and how much of it the engine asks for. */
export const fuel = part(
  { key: "fuel", id: "fuel", label: "Fuel", help: "The fuel and how much of it the engine asks for." },
  {
    kind: choice({
      label: "Fuel",
      help: "What is burnt.",
      options: {
        petrol: "petrol (gasoline)",
        e85: "ethanol blend, 85 %",
        ethanol: "ethanol",
        methanol: "methanol",
        gas: "LPG or natural gas",
      },
    }),
    researchOctane: octane(
      "Research",
      "RON",
      "(ISO 5164, ASTM D2699); not the pump index that averages it with the motor number.",
    ),
    airFuelRatio: dimension({
      label: "Air-fuel ratio",
      symbol: "AFR",
      unit: "1",
      range: ["3", "25"],
      tolerance: "0.2",
      help: "Mass of air to mass of fuel at the power target.",
    }),
    specificConsumption: dimension({
      label: "Specific fuel consumption",
      symbol: "b_e",
      unit: "g/kWh",
      range: ["150 g/kWh", "1500 g/kWh"],
      tolerance: "10 %",
      help: "Fuel per unit of work at the crankshaft, at the power target.",
    }),
    motorOctane: octane(
      "Motor",
      "MON",
      "(ISO 5163, ASTM D2700), found at higher speed and temperature than the research number and therefore lower.",
    ),
    stoichiometricRatio: dimension({
      label: "Stoichiometric air-fuel ratio",
      symbol: "AFR_s",
      unit: "1",
      range: ["4", "20"],
      tolerance: "0.1",
      help: "Mass of air that just burns a mass of the fuel.",
      assumed: byFuel({
        petrol: ["14.5 ± 0.3", "usual for petrol, with up to 10 % ethanol less"],
        e85: ["9.8 ± 0.2", "usual for 85 % ethanol"],
        ethanol: ["9.0 ± 0.05", "ethanol"],
        methanol: ["6.46 ± 0.03", "methanol"],
        gas: ["16.3 ± 0.9", "from LPG to natural gas"],
      }),
    }),
    heatingValue: dimension({
      label: "Lower heating value",
      symbol: "H_u",
      unit: "MJ/kg",
      range: ["10 MJ/kg", "55 MJ/kg"],
      tolerance: "0.5",
      help: "Heat of a kilogram of the fuel, its water staying vapour.",
      assumed: byFuel({
        petrol: ["43.2 MJ/kg ± 0.7", "usual for petrol"],
        e85: ["29.2 MJ/kg ± 1", "usual for 85 % ethanol"],
        ethanol: ["26.9 MJ/kg ± 0.3", "ethanol"],
        methanol: ["19.9 MJ/kg ± 0.2", "methanol"],
        gas: ["47 MJ/kg ± 3", "from LPG to natural gas"],
      }),
    }),
    density: dimension({
      label: "Fuel density",
      symbol: "rho_f",
      unit: "kg/m3",
      range: ["400 kg/m3", "1000 kg/m3"],
      tolerance: "5",
      help: "Density of the liquid fuel at about 20 °C.",
      assumed: byFuel({
        petrol: ["745 kg/m3 ± 25", "usual for petrol"],
        e85: ["781 kg/m3 ± 8", "usual for 85 % ethanol"],
        ethanol: ["789 kg/m3 ± 4", "ethanol"],
        methanol: ["792 kg/m3 ± 4", "methanol"],
      }),
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
  },
);
