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
      assumed: {
        byChoice: "induction.kind",
        values: {
          "naturally-aspirated": {
            value: "0.99 bar absolute ± 0.04",
            because: "an open throttle loses little of the ambient pressure (common practice)",
          },
        },
      },
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
    compressorEfficiency: dimension({
      label: "Compressor efficiency",
      symbol: "eta_c",
      unit: "%",
      range: ["20 %", "90 %"],
      tolerance: "3",
      help: "Isentropic efficiency of the compressor at the power target, from its map.",
      assumed: {
        byChoice: "induction.kind",
        values: {
          turbocharged: { value: "70 % ± 5", because: "good turbocharger compressors (from memory)" },
          supercharged: {
            value: "58 % ± 12",
            because: "from plain displacement blowers to good centrifugal ones (from memory)",
          },
        },
      },
    }),
    pressureLoss: dimension({
      label: "Pressure lost on the way in",
      symbol: "Delta_p_i",
      unit: "bar",
      range: ["0 bar", "0.8 bar"],
      tolerance: "0.03",
      help: "What filter, pipes, charge cooler and throttle take from the pressure at the power target, together.",
      assumed: {
        byChoice: "induction.kind",
        values: {
          turbocharged: {
            value: "0.1 bar ± 0.06",
            because: "filter, pipes and cooler together lose some 0.04 to 0.16 bar (from memory)",
          },
          supercharged: {
            value: "0.1 bar ± 0.06",
            because: "filter, pipes and cooler together lose some 0.04 to 0.16 bar (from memory)",
          },
        },
      },
    }),
    coolerEffectiveness: dimension({
      label: "Charge cooler effectiveness",
      symbol: "epsilon_i",
      unit: "%",
      range: ["0 %", "100 %"],
      tolerance: "5",
      help: "How far the cooler brings the charge towards the temperature of what cools it: 100 % would be all the way; 0 % without a cooler.",
    }),
    coolingTemperature: dimension({
      label: "Temperature of what cools the charge",
      symbol: "T_k",
      unit: "degC",
      range: ["-40 degC", "120 degC"],
      tolerance: "5",
      help: "Air or water where it enters the charge cooler.",
      assumed: {
        value: "30 degC ± 10",
        because: "the air before a cooler is a little warmer than ambient (common practice)",
      },
    }),
    bestFillingShare: dimension({
      label: "Speed of the best filling",
      symbol: "k_bf",
      unit: "1",
      range: ["0.3", "1.3"],
      tolerance: "0.05",
      help: "Crankshaft speed at which the cylinders fill best, over the speed of the target power: what runners and cam are tuned to.",
      assumed: {
        value: "0.75 ± 0.1",
        because: "engines fill best at 65 to 85 % of the speed of their greatest power (common practice)",
      },
    }),
    fillingFall: dimension({
      label: "Fall of the filling",
      symbol: "k_ff",
      unit: "1",
      range: ["0", "1"],
      tolerance: "0.1",
      help: "What of the best filling is lost far below its speed, taken as a parabola; 0 for an engine that fills alike at every speed.",
      assumed: {
        value: "0.35 ± 0.15",
        because: "at a third of the best speed 10 to 22 % of the filling is lost (from memory)",
      },
    }),
    flowCoefficient: dimension({
      label: "Mean inlet flow coefficient",
      symbol: "C_i",
      unit: "1",
      range: ["0.15", "0.7"],
      tolerance: "0.03",
      help: "Mean of the flow coefficient of inlet port and valve over the whole opening, by the area of the valve head; from a flow bench.",
      assumed: {
        value: "0.36 ± 0.05",
        because: "about 0.30 to 0.42 over the opening of usual cams (from memory)",
      },
    }),
  },
);
