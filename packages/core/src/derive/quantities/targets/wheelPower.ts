import { wheelPowerFromCrank } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const wheelPower = quantity({
  id: "wheelPower",
  name: "Power at the wheels",
  symbol: "P_w",
  unit: "kW",
  decimals: 1,
  system: "targets",
  meaning:
    "Target power at the driven wheels: what is left of the power at the crankshaft after gearbox, axle and tyres. Two figures can only be compared when both are meant at the same place.",
  inputs: { P: "targets.power", k_d: "targets.drivelineLoss" },
  choices: { place: "targets.power.place" },
  method:
    "The target power itself when it is meant at the wheels; multiplied by 1 less the driveline loss when it is meant at the crankshaft.",
  cases: {
    "at crank": "P * (1 - k_d)",
    "at wheels": "P",
  },
  compute: ({ P, k_d }, { place }) =>
    place === "at crank" ? wheelPowerFromCrank({ crankPower: P, drivelineLoss: k_d }) : P,
  shape: "monotone",
  valid: "the driveline loss is a share of the crank power",
  sources: [{ id: "definition" }],
  examples: [
    { given: { P: "440 kW", k_d: "15 %", place: "at crank" }, expect: "374.0 kW" },
    { given: { P: "640 kW", k_d: "16 %", place: "at wheels" }, expect: "640.0 kW" },
  ],
  display: true,
});
