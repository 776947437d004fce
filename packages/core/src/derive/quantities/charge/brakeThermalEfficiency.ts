import { thermalEfficiency } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const brakeThermalEfficiency = quantity({
  id: "brakeThermalEfficiency",
  name: "Brake thermal efficiency",
  symbol: "eta_e",
  unit: "%",
  decimals: 1,
  system: "charge",
  meaning:
    "Share of the fuel’s heat that reaches the crankshaft. Spark-ignition engines at full power lie at about 22 to 34 % (from memory): outside, the consumption entered does not suit the fuel.",
  inputs: { b_e: "fuel.specificConsumption", H_u: "fuel.heatingValue" },
  formula: "1 / (b_e * H_u)",
  compute: ({ b_e, H_u }) => thermalEfficiency({ specificFuelConsumption: b_e, heatingValue: H_u }),
  shape: "monotone",
  valid: "consumption as at the target power",
  sources: [{ id: "heywood" }, { id: "from-memory" }],
  examples: [
    { given: { b_e: "285 g/kWh", H_u: "43.2 MJ/kg" }, expect: "29.2 %" },
    {
      given: { b_e: "346.15 g/kWh", H_u: "44 MJ/kg" },
      expect: "23.64 %",
      from: { id: "mathur-sharma", where: "Example 10.1" },
    },
  ],
  display: true,
});
