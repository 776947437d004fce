import { criticalSpeeds } from "@trialfit/mechanics";
import { GREATEST_ORDER } from "../../criticalsInRange.ts";
import { quantity } from "../../Quantity.ts";

export const nearestMajorCritical = quantity({
  id: "nearestMajorCritical",
  name: "Nearest major critical speed",
  symbol: "n_k",
  unit: "rpm",
  decimals: 0,
  system: "torsion",
  meaning:
    "Major critical speed of the first torsional frequency that lies nearest to the highest speed: there every cylinder pushes the twist in step.",
  inputs: { f_1: "firstTorsionalFrequency", z: "block.cylinders", n: "targets.speed" },
  method:
    "Frequency over order for the orders that are multiples of half the number of cylinders, up to the twelfth; the one nearest to the highest speed.",
  compute: ({ f_1, z, n }) => {
    const majors = criticalSpeeds({
      angularFrequency: 2 * Math.PI * f_1,
      cylinders: z,
      greatestOrder: GREATEST_ORDER,
    }).filter(({ major }) => major);
    const speeds = majors.map(({ angularSpeed }) => angularSpeed);
    return speeds.reduce((best, speed) => (Math.abs(speed - n) < Math.abs(best - n) ? speed : best));
  },
  shape: "guarded",
  valid: "even firing; with uneven firing other orders can be as strong",
  sources: [{ id: "taylor" }],
  examples: [{ given: { f_1: "383.2 Hz", z: "6", n: "7600 rpm" }, expect: "7664 rpm" }],
  display: true,
});
