import { flangeTorque as torqueOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const flangeTorque = quantity({
  id: "flangeTorque",
  name: "Torque that the flywheel joint holds",
  symbol: "T_fl",
  unit: "N m",
  decimals: 0,
  system: "flywheel",
  meaning:
    "Torque at which the flywheel would slip on the crankshaft’s flange. Dowels are not counted: they shear one after the other.",
  inputs: {
    n_f: "flywheel.boltCount",
    F_vf: "flywheelPreload",
    mu_j: "flywheel.jointFriction",
    D_bc: "flywheel.boltCircleDiameter",
  },
  formula: "n_f * F_vf * mu_j * D_bc / 2",
  compute: ({ n_f, F_vf, mu_j, D_bc }) =>
    torqueOf({ bolts: n_f, preload: F_vf, friction: mu_j, boltCircleRadius: D_bc / 2 }),
  shape: "monotone",
  valid: "a clean flat joint",
  sources: [{ id: "vdi-2230" }],
  examples: [{ given: { n_f: "8", F_vf: "60 kN", mu_j: "0.15", D_bc: "66 mm" }, expect: "2376 N m" }],
  display: true,
});
