import { pinLineOffset as offsetOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinLineOffset = quantity({
  id: "pinLineOffset",
  name: "Pin line offset",
  symbol: "e",
  unit: "mm",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Sideways distance from the crankshaft axis to the line on which the piston pin travels; positive towards the side to which the crankpin moves after top dead centre. The thrust side lies on the other side, so a pin offset towards it counts negative.",
  inputs: { e_c: "block.cylinderAxisOffset", delta: "piston.pinOffset" },
  formula: "e_c - delta",
  compute: ({ e_c, delta }) => offsetOf({ cylinderAxisOffset: e_c, pinOffset: delta }),
  shape: "monotone",
  valid: "small against the rod length",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { e_c: "0 mm", delta: "0.5 mm" }, expect: "-0.500 mm" }],
});
