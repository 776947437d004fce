import { ringBackClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const secondRingBackClearance = quantity({
  id: "secondRingBackClearance",
  name: "Second ring back clearance",
  symbol: "c_b2",
  unit: "mm",
  decimals: 2,
  system: "rings",
  meaning:
    "Room behind the second ring at the bottom of its groove with the piston pushed to that side; negative when the ring jams in the bore.",
  inputs: {
    B: "block.bore",
    D_g2: "piston.secondGrooveRootDiameter",
    a_2: "ringSet.secondRingRadialThickness",
    C_s: "pistonToBoreClearance",
  },
  formula: "(B - D_g2) / 2 - a_2 - C_s / 2",
  compute: ({ B, D_g2, a_2, C_s }) =>
    ringBackClearance({ bore: B, grooveRootDiameter: D_g2, ringRadialWall: a_2, pistonShift: C_s / 2 }),
  shape: "monotone",
  hot: { quantity: "secondRingBackClearanceHot" },
  valid: "cold",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { B: "86.5 mm", D_g2: "78.3 mm", a_2: "3.1 mm", C_s: "0.09 mm" }, expect: "0.96 mm" }],
  display: true,
});
