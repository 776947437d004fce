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
  formula: "97000 + 15000 * 60 * n_P / (2 * pi * 1000) + 5000 * (60 * n_P / (2 * pi * 1000))^2",
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
