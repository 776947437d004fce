import { reciprocatingMass as massOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const reciprocatingMass = quantity({
  id: "reciprocatingMass",
  name: "Reciprocating mass",
  symbol: "m_rec",
  unit: "g",
  decimals: 0,
  system: "rods",
  meaning:
    "Mass that goes up and down with one piston: piston, pin with retainers, rings, and the share of the rod that is weighed at the small end.",
  inputs: {
    m_p: "piston.mass",
    m_pin: "pistonPin.mass",
    m_rings: "ringSet.mass",
    m_s: "connectingRod.smallEndMass",
  },
  formula: "m_p + m_pin + m_rings + m_s",
  compute: ({ m_p, m_pin, m_rings, m_s }) =>
    massOf({ piston: m_p, pin: m_pin, rings: m_rings, retainers: 0, rodSmallEnd: m_s }),
  shape: "monotone",
  valid: "retainers weighed with the pin",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_p: "330 g", m_pin: "116 g", m_rings: "18 g", m_s: "170 g" }, expect: "634 g" }],
});
