import { throwInertia } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rotatingInertia = quantity({
  id: "rotatingInertia",
  name: "Rotating inertia",
  symbol: "J",
  unit: "kg m2",
  decimals: 4,
  system: "crankshaft",
  meaning:
    "Moment of inertia of everything that turns with the crankshaft: crankshaft, flywheel, damper hub, big ends, and half of the reciprocating masses at the throw, which is their mean over a turn.",
  inputs: {
    J_c: "crankshaft.inertia",
    J_f: "flywheel.inertia",
    J_h: "damper.hubInertia",
    z: "block.cylinders",
    m_b: "connectingRod.bigEndMass",
    m_rec: "reciprocatingMass",
    r: "throwRadius",
  },
  formula: "J_c + J_f + J_h + z * (m_b + m_rec / 2) * r^2",
  compute: ({ J_c, J_f, J_h, z, m_b, m_rec, r }) =>
    throwInertia({
      crankInertia: J_c + J_f + J_h,
      rods: z,
      rotatingRodMass: m_b,
      reciprocatingMass: m_rec,
      throwRadius: r,
    }),
  shape: "monotone",
  valid: "mean over a turn; camshafts and pumps left out",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: {
        J_c: "0.036 kg m2",
        J_f: "0.09 kg m2",
        J_h: "0.006 kg m2",
        z: "4",
        m_b: "405 g",
        m_rec: "634 g",
        r: "47 mm",
      },
      expect: "0.1384 kg m2",
    },
  ],
  display: true,
});
