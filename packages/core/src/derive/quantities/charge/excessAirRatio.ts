import { quantity } from "../../Quantity.ts";

export const excessAirRatio = quantity({
  id: "excessAirRatio",
  name: "Excess-air ratio",
  symbol: "lambda",
  unit: "1",
  decimals: 3,
  system: "charge",
  meaning:
    "Air-fuel ratio over that which just burns the fuel, lambda: below 1 the mixture is rich. Petrol engines give their greatest power at about 0.85 to 0.92; charged ones are run richer to cool (from memory).",
  inputs: { AFR: "fuel.airFuelRatio", AFR_s: "fuel.stoichiometricRatio" },
  formula: "AFR / AFR_s",
  compute: ({ AFR, AFR_s }) => AFR / AFR_s,
  shape: "monotone",
  valid: "any fuel",
  sources: [{ id: "definition" }, { id: "from-memory" }],
  examples: [{ given: { AFR: "12.6", AFR_s: "14.5" }, expect: "0.869" }],
  display: true,
});
