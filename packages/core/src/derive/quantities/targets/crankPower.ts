import { crankPowerFromWheel } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crankPower = quantity({
  id: "crankPower",
  name: "Power at the crankshaft",
  symbol: "P_c",
  unit: "kW",
  decimals: 1,
  system: "targets",
  meaning:
    "Target power at the crankshaft. A figure at the wheels is divided by what is left after the driveline has taken its share; loads, air and fuel all follow from the power at the crankshaft.",
  inputs: { P: "targets.power", k_d: "targets.drivelineLoss" },
  choices: { place: "targets.power.place" },
  method:
    "The target power itself when it is meant at the crankshaft; divided by 1 less the driveline loss when it is meant at the wheels.",
  cases: {
    "at crank": "P",
    "at wheels": "P / (1 - k_d)",
  },
  compute: ({ P, k_d }, { place }) =>
    place === "at wheels" ? crankPowerFromWheel({ wheelPower: P, drivelineLoss: k_d }) : P,
  shape: "monotone",
  valid:
    "the driveline loss is a share of the crank power; a fixed amount of power is not a loss of this kind",
  sources: [{ id: "definition" }],
  examples: [
    { given: { P: "640 kW", k_d: "16 %", place: "at wheels" }, expect: "761.9 kW" },
    { given: { P: "440 kW", k_d: "15 %", place: "at crank" }, expect: "440.0 kW" },
  ],
});
