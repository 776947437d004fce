import { torqueFromPower } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const torqueAtPower = quantity({
  id: "torqueAtPower",
  name: "Torque at the target power",
  symbol: "T_P",
  unit: "N m",
  decimals: 0,
  system: "targets",
  meaning:
    "Torque at the crankshaft at the speed of the target power. The greatest torque usually comes at a lower speed and is larger.",
  inputs: { P_c: "crankPower", n_P: "targets.powerSpeed" },
  formula: "P_c / n_P",
  compute: ({ P_c, n_P }) => torqueFromPower({ power: P_c, angularSpeed: n_P }),
  shape: "monotone",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [
    { given: { P_c: "440 kW", n_P: "7400 rpm" }, expect: "568 N m" },
    {
      given: { P_c: "78 kW", n_P: "3200 rpm" },
      expect: "233 N m",
      from: { id: "mathur-sharma", where: "Example 10.1" },
    },
  ],
});
