import { quantity } from "../../Quantity.ts";

export const powerInThisAir = quantity({
  id: "powerInThisAir",
  name: "Power in this air",
  symbol: "P_air",
  unit: "kW",
  decimals: 1,
  system: "charge",
  meaning:
    "What an engine that reaches its target power in standard air gives at the crankshaft in the ambient air entered. A charged engine is taken to hold its manifold pressure, and with it its power.",
  inputs: { P_c: "crankPower", K_a: "atmosphericCorrection" },
  choices: { kind: "induction.kind" },
  method:
    "Without boost the target power divided by the correction to standard air; with boost the target power.",
  cases: {
    "naturally-aspirated": "P_c / K_a",
    turbocharged: "P_c",
    supercharged: "P_c",
  },
  compute: ({ P_c, K_a }, { kind }) => (kind === "naturally-aspirated" ? P_c / K_a : P_c),
  shape: "monotone",
  valid: "the target power meant for standard air; a compressor at its limit loses power with height too",
  sources: [{ id: "sae-j1349" }, { id: "definition" }],
  examples: [
    { given: { P_c: "432.5 kW", K_a: "1.05", kind: "naturally-aspirated" }, expect: "411.9 kW" },
    { given: { P_c: "440 kW", K_a: "1.05", kind: "turbocharged" }, expect: "440.0 kW" },
  ],
  display: true,
});
