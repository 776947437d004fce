import { ringBendingStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topRingStress = quantity({
  id: "topRingStress",
  name: "Bending stress of the top ring",
  symbol: "sigma_r1",
  unit: "MPa",
  decimals: 0,
  system: "rings",
  meaning:
    "Stress at the back of the top ring, opposite its gap, when it presses on its bore by its own tension. Being spread over the piston strains it more.",
  inputs: {
    p_01: "topRingPressure",
    B: "block.bore",
    a_1: "ringSet.topRingRadialThickness",
  },
  formula: "3 * p_01 * (B / a_1)^2",
  compute: ({ p_01, B, a_1 }) => ringBendingStress({ pressure: p_01, bore: B, radialThickness: a_1 }),
  shape: "monotone",
  valid: "even contact round the bore; a ring thin beside its bore",
  sources: [{ id: "khurmi-gupta", where: "piston rings, from memory" }],
  examples: [{ given: { p_01: "0.2 MPa", B: "86.5 mm", a_1: "3.2 mm" }, expect: "438 MPa" }],
  display: true,
});
