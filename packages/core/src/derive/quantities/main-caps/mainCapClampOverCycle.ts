import { quantity } from "../../Quantity.ts";

export const mainCapClampOverCycle = quantity({
  id: "mainCapClampOverCycle",
  name: "Clamp of a main cap over its real load",
  symbol: "R_clc",
  unit: "1",
  decimals: 2,
  system: "main-caps",
  meaning:
    "Preload of all fasteners of one cap, or of one bearing of a split crankcase, over the greatest pull of the real bearing load over the cycle. It holds for every layout, opposed cylinders too.",
  inputs: { n_c: "mainCap.boltsPerCap", F_vm: "mainPreload", F_mc: "mainCapPull" },
  formula: "n_c * F_vm / F_mc",
  compute: ({ n_c, F_vm, F_mc }) => {
    if (F_mc === 0) throw new RangeError("the load never pulls at a cap");
    return (n_c * F_vm) / F_mc;
  },
  shape: "guarded",
  valid: "at the power speed; fasteners that share alike; cross bolts not counted",
  sources: [{ id: "vdi-2230" }],
  examples: [{ given: { n_c: "2", F_vm: "62 kN", F_mc: "31 kN" }, expect: "4.00" }],
});
