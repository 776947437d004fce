import { bigEndJointLoad as loadOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bigEndJointLoad = quantity({
  id: "bigEndJointLoad",
  name: "Load on the big-end joint",
  symbol: "F_j",
  unit: "kN",
  decimals: 1,
  system: "rods",
  meaning:
    "Force that tries to open the joint of the big end at overspeed: the inertia force, and the centrifugal force of the part of the big end above the joint.",
  inputs: {
    m_rec: "reciprocatingMass",
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    n_o: "targets.overspeed",
    m_b: "connectingRod.bigEndMass",
    m_cap: "connectingRod.capMass",
  },
  formula: "m_rec * n_o^2 * r * (l + r)^2 / (l * sqrt((l + r)^2 - e^2)) + (m_b - m_cap) * r * n_o^2",
  compute: ({ m_rec, r, l, e, n_o, m_b, m_cap }) =>
    loadOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      reciprocatingMass: m_rec,
      rotatingMass: m_b,
      capMass: m_cap,
      angularSpeed: n_o,
    }),
  shape: "guarded",
  valid: "a cap no heavier than the whole big end; joint square to the rod",
  sources: [{ id: "kolchin-demidov" }],
  examples: [
    {
      given: {
        m_rec: "634 g",
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        n_o: "8200 rpm",
        m_b: "405 g",
        m_cap: "185 g",
      },
      expect: "36.7 kN",
    },
  ],
});
