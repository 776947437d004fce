import { quantity } from "../../Quantity.ts";

/** A thousand revolutions a minute [rad/s]. */
const THOUSAND_TURNS = (1000 * 2 * Math.PI) / 60;

export const oilPressurePerSpeed = quantity({
  id: "oilPressurePerSpeed",
  name: "Oil pressure for each 1000 rpm",
  symbol: "p_1000",
  unit: "bar",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Hot oil pressure at the highest speed, shared out over its thousands of revolutions a minute: the trade’s rule of thumb for enough pressure.",
  inputs: { p_o: "oil.pressure", n: "targets.speed" },
  formula: "p_o / (60 * n / (2 * pi * 1000))",
  compute: ({ p_o, n }) => p_o / (n / THOUSAND_TURNS),
  shape: "monotone",
  valid: "plain bearings, oil hot",
  sources: [{ id: "common-practice" }],
  examples: [{ given: { p_o: "5.4 bar", n: "7800 rpm" }, expect: "0.69 bar" }],
  display: true,
});
