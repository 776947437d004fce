import { eyeStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const smallEndTension = quantity({
  id: "smallEndTension",
  name: "Mean tension of the small end",
  symbol: "sigma_se",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning:
    "Mean stress beside the small end’s bore when piston, pin and rings pull at overspeed. At the bore it is two to four times as high.",
  inputs: {
    m_p: "piston.mass",
    m_pin: "pistonPin.mass",
    m_rings: "ringSet.mass",
    a_o: "accelerationAtOverspeed",
    D_so: "connectingRod.smallEndOuterDiameter",
    D_bu: "connectingRod.bushOuterDiameter",
    b_se: "connectingRod.smallEndWidth",
  },
  formula: "(m_p + m_pin + m_rings) * a_o / ((D_so - D_bu) * b_se)",
  compute: ({ m_p, m_pin, m_rings, a_o, D_so, D_bu, b_se }) =>
    eyeStress({
      force: (m_p + m_pin + m_rings) * a_o,
      outerDiameter: D_so,
      boreDiameter: D_bu,
      width: b_se,
    }),
  shape: "guarded",
  valid: "for comparing; the weight of the eye itself left out",
  sources: [{ id: "definition" }, { id: "common-practice", where: "stress at the bore" }],
  examples: [
    {
      given: {
        m_p: "330 g",
        m_pin: "116 g",
        m_rings: "18 g",
        a_o: "45930 m/s2",
        D_so: "33 mm",
        D_bu: "25 mm",
        b_se: "22 mm",
      },
      expect: "121 MPa",
    },
  ],
  display: true,
});
