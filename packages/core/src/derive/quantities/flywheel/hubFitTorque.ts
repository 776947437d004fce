import { pressFitTorque } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const hubFitTorque = quantity({
  id: "hubFitTorque",
  name: "Torque that the hub’s fit holds",
  symbol: "T_h",
  unit: "N m",
  decimals: 0,
  system: "flywheel",
  meaning: "Torque at which the hub would slip on the snout without key and bolt.",
  inputs: {
    mu_f: "damper.fitFriction",
    p_h: "hubFitPressure",
    D_sn: "damper.snoutDiameter",
    L_h: "damper.hubLength",
  },
  formula: "mu_f * p_h * pi * D_sn^2 * L_h / 2",
  compute: ({ mu_f, p_h, D_sn, L_h }) =>
    pressFitTorque({ pressure: p_h, diameter: D_sn, length: L_h, friction: mu_f }),
  shape: "monotone",
  valid: "as the pressure",
  sources: [{ id: "shigley", where: "press and shrink fits" }],
  examples: [{ given: { mu_f: "0.12", p_h: "50.82 MPa", D_sn: "38 mm", L_h: "45 mm" }, expect: "622 N m" }],
  display: true,
});
