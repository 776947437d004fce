import { capSlipRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainCapSlipReserve = quantity({
  id: "mainCapSlipReserve",
  name: "Slip reserve of a main cap",
  symbol: "R_sl",
  unit: "1",
  decimals: 2,
  system: "main-caps",
  meaning:
    "Friction that holds a main cap sideways over the sideways part of the firing load, in a V; for opposed cylinders all of it pushes sideways. Below 1 only register, dowels and cross bolts keep the cap from walking.",
  inputs: {
    n_c: "mainCap.boltsPerCap",
    F_vm: "mainPreload",
    F_g: "gasForce",
    gamma: "block.bankAngle",
    mu_c: "mainCap.jointFriction",
  },
  formula: "mu_c * (n_c * F_vm - F_g / 2 * cos(gamma / 2)) / (F_g / 2 * sin(gamma / 2))",
  compute: ({ n_c, F_vm, F_g, gamma, mu_c }) => {
    if (gamma === 0) throw new RangeError("cylinders in a row do not push a cap sideways");
    return capSlipRatio({
      bolts: n_c,
      preload: F_vm,
      firingLoad: F_g / 2,
      firingLineAngle: gamma / 2,
      friction: mu_c,
    });
  },
  shape: "guarded",
  valid: "V engines and opposed cylinders on caps; caps split square to the middle between the banks",
  sources: [{ id: "vdi-2230" }],
  examples: [
    {
      given: { n_c: "4", F_vm: "62 kN", F_g: "45.65 kN", gamma: "90 deg", mu_c: "0.15" },
      expect: "2.15",
    },
    {
      given: { n_c: "4", F_vm: "62 kN", F_g: "45.65 kN", gamma: "180 deg", mu_c: "0.15" },
      expect: "1.63",
    },
  ],
  display: true,
});
