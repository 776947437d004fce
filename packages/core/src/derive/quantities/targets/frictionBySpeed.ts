import { frictionBySpeed as frictionOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const frictionBySpeed = quantity({
  id: "frictionBySpeed",
  name: "Friction pressure by speed",
  symbol: "p_f1",
  unit: "bar",
  decimals: 2,
  system: "targets",
  meaning:
    "Friction as a mean pressure at the speed of the target power, pumps and gas exchange included, by a curve over speed alone: what the cylinders must make before anything reaches the crankshaft.",
  inputs: { n_P: "targets.powerSpeed" },
  method: "0.97 bar + 0.15 bar for each thousand revolutions a minute + 0.05 bar for their square.",
  compute: ({ n_P }) => frictionOf(n_P),
  shape: "monotone",
  valid:
    "fitted to four-cylinder engines of 0.8 to 1.3 litres up to about 6000 rpm at full throttle; carried further here",
  sources: [{ id: "heywood", where: "eq. 13.6" }],
  examples: [
    { given: { n_P: "7400 rpm" }, expect: "4.82 bar" },
    { given: { n_P: "3000 rpm" }, expect: "1.87 bar", from: { id: "heywood", where: "eq. 13.6" } },
  ],
  display: true,
});
