import { criticalsInRange as inRange } from "../../criticalsInRange.ts";

export const majorCriticalsInRange = inRange({
  id: "majorCriticalsInRange",
  name: "Major orders that meet the first frequency in the speed range",
  symbol: "N_km",
  meaning:
    "How many major orders, at which all cylinders push in step, meet the first torsional frequency between the lowest and the highest speed. Without a damper none should lie where the engine stays.",
  frequency: ["f_1", "firstTorsionalFrequency", "383.2 Hz"],
  counts: ({ major }) => major,
  words: "the major ones",
  expect: "3",
});
