import { inertiaForceAtTopDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inertiaForce = quantity({
  id: "inertiaForce",
  name: "Inertia force at overspeed",
  symbol: "F_i",
  unit: "kN",
  decimals: 1,
  system: "rods",
  meaning:
    "Pull of the reciprocating mass on the rod at overspeed, at the top dead centre between exhaust and inlet, where no gas pressure holds the piston down.",
  inputs: {
    m_rec: "reciprocatingMass",
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    n_o: "targets.overspeed",
  },
  formula: "m_rec * n_o^2 * r * (l + r)^2 / (l * sqrt((l + r)^2 - e^2))",
  compute: ({ m_rec, r, l, e, n_o }) =>
    inertiaForceAtTopDeadCentre({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      reciprocatingMass: m_rec,
      angularSpeed: n_o,
    }),
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "heywood" }, { id: "plane-geometry" }],
  examples: [
    {
      given: { m_rec: "634 g", r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n_o: "8200 rpm" },
      expect: "29.1 kN",
    },
  ],
});
