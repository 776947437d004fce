import { crankForces } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crankpinInertiaLoad = quantity({
  id: "crankpinInertiaLoad",
  name: "Crankpin load by inertia at overspeed",
  symbol: "F_co",
  unit: "kN",
  decimals: 1,
  system: "crankshaft",
  meaning:
    "Load of one rod on its crankpin at top dead centre between exhaust and inlet, at overspeed: the pull of all masses, with no gas against it.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    m_rec: "reciprocatingMass",
    m_b: "connectingRod.bigEndMass",
    n_o: "targets.overspeed",
  },
  method:
    "Inertia of the reciprocating mass along the rod and of the big end round the crankshaft, added as vectors at crank angle 0.",
  compute: ({ r, l, e, m_rec, m_b, n_o }) =>
    crankForces({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: 1,
      pressureAt: () => 0,
      casePressure: 0,
      reciprocatingMass: m_rec,
      rotatingRodMass: m_b,
      angularSpeed: n_o,
    })(0).crankpin.magnitude,
  shape: "guarded",
  valid: "the rod as two masses",
  sources: [{ id: "taylor" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", m_rec: "634 g", m_b: "405 g", n_o: "7800 rpm" },
      expect: "39.0 kN",
    },
  ],
  display: true,
});
