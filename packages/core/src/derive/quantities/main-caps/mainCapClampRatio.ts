import { capClampRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainCapClampRatio = quantity({
  id: "mainCapClampRatio",
  name: "Clamp of a main cap over firing load",
  symbol: "R_cl",
  unit: "1",
  decimals: 2,
  system: "main-caps",
  meaning:
    "Preload of all fasteners of one cap over the part of the firing load that pulls it off. One main bearing takes half the gas force of a cylinder; in a V it pulls at half the bank angle.",
  inputs: { n_c: "mainCap.boltsPerCap", F_vm: "mainPreload", F_g: "gasForce", gamma: "block.bankAngle" },
  formula: "n_c * F_vm / (F_g / 2 * cos(gamma / 2))",
  compute: ({ n_c, F_vm, F_g, gamma }) => {
    if (gamma === Math.PI)
      throw new RangeError(
        "the firing of opposed cylinders lies along the joint of such a cap and pulls at nothing; mainCapClampOverCycle takes the real load",
      );
    return capClampRatio({ bolts: n_c, preload: F_vm, firingLoad: F_g / 2, firingLineAngle: gamma / 2 });
  },
  shape: "monotone",
  valid: "caps split square to the middle between the banks; bank angles below 180°; cross bolts not counted",
  sources: [{ id: "vdi-2230" }],
  examples: [
    { given: { n_c: "2", F_vm: "67.7078 kN", F_g: "92.8494 kN", gamma: "0 deg" }, expect: "2.92" },
    { given: { n_c: "4", F_vm: "62 kN", F_g: "92.8494 kN", gamma: "90 deg" }, expect: "7.55" },
  ],
});
