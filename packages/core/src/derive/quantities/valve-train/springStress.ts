import { springShearStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const springStress = quantity({
  id: "springStress",
  name: "Spring shear stress at full lift",
  symbol: "tau_s",
  unit: "MPa",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Greatest shear stress in the wire of the valve spring at full lift, with the curvature of the coil allowed for.",
  inputs: {
    F_o: "openSpringForce",
    q_s: "valveSpring.loadShare",
    D_w: "valveSpring.meanDiameter",
    d_w: "valveSpring.wireDiameter",
  },
  formula:
    "((4 * D_w / d_w - 1) / (4 * D_w / d_w - 4) + 0.615 * d_w / D_w) * 8 * q_s * F_o * D_w / (pi * d_w^3)",
  compute: ({ F_o, q_s, D_w, d_w }) =>
    springShearStress({ force: q_s * F_o, wireDiameter: d_w, meanDiameter: D_w }),
  shape: "guarded",
  valid: "round wire, coil at least about three wires wide; surge adds to it at speed",
  sources: [{ id: "shigley", where: "helical springs, Wahl’s factor" }],
  examples: [{ given: { F_o: "1300 N", q_s: "100 %", D_w: "31 mm", d_w: "5.4 mm" }, expect: "825 MPa" }],
  display: true,
});
