import { quantity } from "../../Quantity.ts";

export const rodBoltPermanentSet = quantity({
  id: "rodBoltPermanentSet",
  name: "Permanent set of the rod bolt",
  symbol: "Delta_l0",
  unit: "um",
  decimals: 1,
  system: "rods",
  meaning:
    "How much longer the loose bolt has become since it was new. A bolt that has not yielded comes back to its length.",
  inputs: { l_1b: "rodBolt.freeLength", l_0: "rodBolt.newFreeLength" },
  formula: "l_1b - l_0",
  compute: ({ l_1b, l_0 }) => l_1b - l_0,
  shape: "monotone",
  valid: "both measured cold, the same way",
  sources: [{ id: "definition" }],
  examples: [{ given: { l_1b: "48.28 mm", l_0: "48.26 mm" }, expect: "20.0 um" }],
});
