import { ringBackClearance as clearanceOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topRingBackClearance = quantity({
  id: "topRingBackClearance",
  name: "Top ring back clearance",
  symbol: "c_b1",
  unit: "mm",
  decimals: 3,
  system: "rings",
  meaning:
    "Room behind the top ring in its groove with the piston lying against one side of the bore. Negative: the ring stands proud on the far side and the piston is forced against the bore.",
  inputs: {
    B: "block.bore",
    D_g1: "piston.topGrooveRootDiameter",
    a_1: "ringSet.topRingRadialThickness",
    C_s: "pistonToBoreClearance",
  },
  formula: "(B - D_g1) / 2 - a_1 - max(C_s, 0) / 2",
  compute: ({ B, D_g1, a_1, C_s }) =>
    clearanceOf({
      bore: B,
      grooveRootDiameter: D_g1,
      ringRadialWall: a_1,
      pistonShift: Math.max(C_s, 0) / 2,
    }),
  shape: "monotone",
  hot: { quantity: "topRingBackClearanceHot" },
  valid: "cold; a piston tight in the bore does not shift",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { B: "86.5 mm", D_g1: "78.3 mm", a_1: "3.1 mm", C_s: "0.09 mm" }, expect: "0.955 mm" }],
});
