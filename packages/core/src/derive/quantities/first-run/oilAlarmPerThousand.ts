import { quantity } from "../../Quantity.ts";

/** A thousand revolutions a minute [rad/s]. */
const THOUSAND_TURNS = (1000 * 2 * Math.PI) / 60;

export const oilAlarmPerThousand = quantity({
  id: "oilAlarmPerThousand",
  name: "Oil pressure alarm for each 1000 rpm",
  symbol: "p_al1",
  unit: "bar",
  decimals: 2,
  system: "first-run",
  meaning:
    "Oil pressure at which the alarm acts or the engine is stopped, for each 1000 rpm of the highest speed. Set too low it tells only of what is already lost.",
  inputs: { p_al: "running.alarmOilPressure", n: "targets.speed" },
  formula: "p_al / (60 * n / (2 * pi * 1000))",
  compute: ({ p_al, n }) => p_al / (n / THOUSAND_TURNS),
  shape: "monotone",
  valid: "plain bearings fed from one pump",
  sources: [{ id: "definition" }],
  examples: [
    { given: { p_al: "4.3 bar", n: "7800 rpm" }, expect: "0.55 bar" },
    { given: { p_al: "3 bar", n: "6000 rpm" }, expect: "0.50 bar" },
  ],
});
