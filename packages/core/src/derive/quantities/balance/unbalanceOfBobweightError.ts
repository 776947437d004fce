import { quantity } from "../../Quantity.ts";

export const unbalanceOfBobweightError = quantity({
  id: "unbalanceOfBobweightError",
  name: "Unbalance by the wrong bobweight",
  symbol: "U_m",
  unit: "g mm",
  decimals: 0,
  system: "balance",
  meaning:
    "Unbalance that the bobweight’s error leaves at one crankpin. On an even crankshaft the pins cancel one another, but each loads its own bearings.",
  inputs: { Delta_m: "bobweightError", r: "throwRadius" },
  formula: "abs(Delta_m) * r",
  compute: ({ Delta_m, r }) => Math.abs(Delta_m) * r,
  shape: "guarded",
  valid: "one crankpin alone",
  sources: [{ id: "definition" }],
  examples: [{ given: { Delta_m: "8 g", r: "47 mm" }, expect: "376 g mm" }],
  display: true,
});
