import { quantity } from "../../Quantity.ts";

export const antiKnockIndex = quantity({
  id: "antiKnockIndex",
  name: "Anti-knock index",
  symbol: "AKI",
  unit: "1",
  decimals: 1,
  system: "charge",
  meaning:
    "Mean of research and motor octane number, as pumps in some countries show it. A number without its kind is useless: research 98 is about 93 of this.",
  inputs: { RON: "fuel.researchOctane", MON: "fuel.motorOctane" },
  formula: "(RON + MON) / 2",
  compute: ({ RON, MON }) => (RON + MON) / 2,
  shape: "monotone",
  valid: "petrol and its blends",
  sources: [{ id: "astm-d4814" }],
  examples: [{ given: { RON: "98", MON: "87" }, expect: "92.5" }],
  display: true,
});
