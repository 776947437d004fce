import { criticalsInRange as inRange } from "../../criticalsInRange.ts";

export const secondCriticalsInRange = inRange({
  id: "secondCriticalsInRange",
  name: "Orders that meet the second frequency in the speed range",
  symbol: "N_k2",
  meaning:
    "How many orders of the engine, majors and minors, meet the second torsional frequency between the lowest and the highest speed. They are mostly weak; the explanation lists each with its speed.",
  frequency: ["f_2", "secondTorsionalFrequency", "1020 Hz"],
  counts: () => true,
  words: "those",
  expect: "8",
});
