import { criticalsInRange as inRange } from "../../criticalsInRange.ts";

export const criticalsInRange = inRange({
  id: "criticalsInRange",
  name: "Orders that meet the first frequency in the speed range",
  symbol: "N_k",
  meaning:
    "How many orders of the engine, majors and minors, meet the first torsional frequency between the lowest and the highest speed. The explanation lists each with its speed.",
  frequency: ["f_1", "firstTorsionalFrequency", "383.2 Hz"],
  counts: () => true,
  words: "those",
  expect: "18",
});
