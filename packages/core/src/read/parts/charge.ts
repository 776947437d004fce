import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** How the air gets in. */
export const induction = part(
  { key: "induction", id: "induction", label: "Induction", help: "How the air gets in." },
  {
    kind: choice({
      label: "Induction kind",
      help: "Whether the charge is at ambient pressure or above.",
      options: {
        "naturally-aspirated": "ambient pressure",
        turbocharged: "compressor driven by exhaust gas",
        supercharged: "compressor driven by the crankshaft",
      },
    }),
    manifoldPressure: dimension({
      label: "Planned manifold pressure",
      symbol: "p_m",
      unit: "bar",
      range: ["0.3 bar", "8 bar"],
      tolerance: "0.05",
      places: ["absolute"],
      help: "Pressure in the inlet manifold at the power target, counted from a vacuum and said so: 2.0 bar absolute. A boost gauge reads about 1 bar less.",
    }),
    chargeTemperature: dimension({
      label: "Charge temperature",
      symbol: "T_m",
      unit: "degC",
      range: ["-40 degC", "250 degC"],
      tolerance: "5",
      help: "Temperature of the air at the inlet valve, after any cooler.",
    }),
    chargeHeating: dimension({
      label: "Heating of the charge",
      symbol: "Delta_T_c",
      unit: "K",
      range: ["0 K", "150 K"],
      tolerance: "10",
      help: "How much warmer the charge is at inlet closing than in the manifold: hot valves and walls and the gas left from the cycle before warm it, fuel that evaporates in the cylinder cools it.",
      assumed: {
        value: "25 K ± 15",
        because: "the charge warms by about 10 to 40 K in the cylinder (from memory)",
      },
    }),
    backPressure: dimension({
      label: "Exhaust back pressure",
      symbol: "p_b",
      unit: "bar",
      range: ["0.5 bar", "10 bar"],
      tolerance: "0.1",
      places: ["absolute"],
      help: "Pressure in the exhaust manifold at the power target, before any turbine, counted from a vacuum and said so: 1.1 bar absolute.",
      assumed: {
        byChoice: "induction.kind",
        values: {
          "naturally-aspirated": {
            value: "1.08 bar absolute ± 0.06",
            because: "free exhausts hold back some 0.02 to 0.12 bar at full power (from memory)",
          },
          supercharged: {
            value: "1.15 bar absolute ± 0.1",
            because: "free exhausts of charged engines hold back some 0.05 to 0.25 bar (from memory)",
          },
        },
      },
    }),
    volumetricEfficiency: dimension({
      label: "Volumetric efficiency",
      symbol: "eta_v",
      unit: "%",
      range: ["30 %", "140 %"],
      tolerance: "5",
      help: "Air taken in, over swept volume at the density in the manifold, at the power target.",
    }),
  },
);

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
    researchOctane: dimension({
      label: "Research octane number",
      symbol: "RON",
      unit: "1",
      range: ["60", "130"],
      tolerance: "1",
      help: "Research octane number (ISO 5164, ASTM D2699); not the pump index that averages it with the motor number.",
    }),
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
  },
);
