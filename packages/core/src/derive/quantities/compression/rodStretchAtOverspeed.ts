import { rodStretch } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodStretchAtOverspeed = quantity({
  id: "rodStretchAtOverspeed",
  name: "Stretch of the rod at overspeed",
  symbol: "delta_l",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How much the piston group and half of the small end stretch the rod at the top dead centre between exhaust and inlet, where no gas pressure holds the piston down. It closes the gap between piston and head.",
  inputs: {
    m_p: "piston.mass",
    m_pin: "pistonPin.mass",
    m_rings: "ringSet.mass",
    m_s: "connectingRod.smallEndMass",
    a_o: "accelerationAtOverspeed",
    l: "connectingRod.length",
    E_r: "connectingRod.modulus",
    A_r: "connectingRod.beamArea",
  },
  formula: "(m_p + m_pin + m_rings + m_s / 2) * a_o * l / (E_r * A_r)",
  compute: ({ m_p, m_pin, m_rings, m_s, a_o, l, E_r, A_r }) =>
    rodStretch({
      pistonGroupMass: m_p + m_pin + m_rings,
      smallEndMass: m_s,
      acceleration: a_o,
      rodLength: l,
      elasticModulus: E_r,
      beamArea: A_r,
    }),
  shape: "guarded",
  valid: "a bar of the beam’s least section over the whole length: on the safe side",
  sources: [{ id: "shigley", where: "bar in tension" }],
  examples: [
    {
      given: {
        m_p: "330 g",
        m_pin: "116 g",
        m_rings: "18 g",
        m_s: "170 g",
        a_o: "41557 m/s2",
        l: "144.5 mm",
        E_r: "206 GPa",
        A_r: "240 mm2",
      },
      expect: "0.067 mm",
    },
  ],
  display: true,
});
