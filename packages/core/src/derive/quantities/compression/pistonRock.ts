import { pistonRock as rockOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pistonRock = quantity({
  id: "pistonRock",
  name: "Rise of the crown’s edge by rocking",
  symbol: "rho_p",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How far one edge of the crown rises when the piston rocks across the clearance that its skirt has hot. It closes the gap between piston and head; a cold piston rocks more.",
  inputs: { B: "block.bore", C_sh: "skirtClearanceHot", L_s: "piston.skirtLength" },
  formula: "B / 2 * max(C_sh, 0) / L_s",
  compute: ({ B, C_sh, L_s }) => rockOf({ bore: B, skirtClearance: Math.max(C_sh, 0), skirtLength: L_s }),
  shape: "monotone",
  valid: "small angles; a skirt without clearance when hot does not rock",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { B: "86.5 mm", C_sh: "0.06 mm", L_s: "34 mm" }, expect: "0.076 mm" },
    { given: { B: "86.5 mm", C_sh: "-0.02 mm", L_s: "34 mm" }, expect: "0.000 mm" },
  ],
  display: true,
});
