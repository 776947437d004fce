import { springSurgeOrder as orderOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const springSurgeOrder = quantity({
  id: "springSurgeOrder",
  name: "Spring surge order",
  symbol: "k_f",
  unit: "1",
  decimals: 1,
  system: "valve-train",
  meaning:
    "Surge frequency over the turns of the camshaft at the highest speed. The higher, the weaker the order of the lobe that meets it.",
  inputs: { f_s: "springSurgeFrequency", n: "targets.speed" },
  formula: "4 * pi * f_s / n",
  compute: ({ f_s, n }) => orderOf({ surgeAngularFrequency: 2 * Math.PI * f_s, angularSpeed: n }),
  shape: "monotone",
  valid: "four-stroke engines: the camshaft turns at half the speed of the crankshaft",
  sources: [{ id: "definition" }],
  examples: [{ given: { f_s: "436 Hz", n: "7600 rpm" }, expect: "6.9" }],
});
