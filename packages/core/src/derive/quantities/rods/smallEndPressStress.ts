import { pressFitHoopStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const smallEndPressStress = quantity({
  id: "smallEndPressStress",
  name: "Stress of the small end by its bush",
  symbol: "sigma_bu",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning:
    "Hoop stress at the bore of the small end that the pressed bush alone brings. The pull of the piston comes on top.",
  inputs: {
    p_bu: "bushFitPressure",
    D_bu: "connectingRod.bushOuterDiameter",
    D_so: "connectingRod.smallEndOuterDiameter",
  },
  formula: "p_bu * (D_so^2 + D_bu^2) / (D_so^2 - D_bu^2)",
  compute: ({ p_bu, D_bu, D_so }) =>
    pressFitHoopStress({ pressure: p_bu, diameter: D_bu, outerDiameter: D_so }),
  shape: "guarded",
  valid: "as the pressure",
  sources: [{ id: "shigley", where: "press and shrink fits" }],
  examples: [{ given: { p_bu: "24 MPa", D_bu: "25 mm", D_so: "33 mm" }, expect: "89 MPa" }],
  display: true,
});
