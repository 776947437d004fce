import { ringBackClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const oilRingBackClearance = quantity({
  id: "oilRingBackClearance",
  name: "Oil ring back clearance",
  symbol: "c_b3",
  unit: "mm",
  decimals: 2,
  system: "rings",
  meaning:
    "Room behind the oil ring at the bottom of its groove with the piston lying against that side of the bore; negative when rails or expander jam in the bore, or lift the piston off it.",
  inputs: {
    B: "block.bore",
    D_g3: "piston.oilGrooveRootDiameter",
    a_3: "ringSet.oilRailRadialThickness",
    C_s: "pistonToBoreClearance",
  },
  formula: "(B - D_g3) / 2 - a_3 - max(C_s, 0) / 2",
  compute: ({ B, D_g3, a_3, C_s }) =>
    ringBackClearance({
      bore: B,
      grooveRootDiameter: D_g3,
      ringRadialWall: a_3,
      pistonShift: Math.max(C_s, 0) / 2,
    }),
  shape: "monotone",
  hot: { quantity: "oilRingBackClearanceHot" },
  valid:
    "cold; a piston tight in the bore does not shift; an expander that is pressed together only while fitted",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { B: "86.5 mm", D_g3: "78.9 mm", a_3: "2.9 mm", C_s: "0.09 mm" }, expect: "0.86 mm" }],
  display: true,
});
