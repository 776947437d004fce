import type { FieldDefault } from "../FieldSpec.ts";
import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";
import { supplyFields } from "./fuel/supplyFields.ts";

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
    ...supplyFields,
  },
);
