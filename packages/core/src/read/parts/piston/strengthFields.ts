import { pistonAlloys } from "../../../tables/alloys.ts";
import { strengthByAlloy } from "../../../tables/strengthByAlloy.ts";
import { dimension } from "../../fields.ts";

/** Strength of the piston's alloy, cold. */
export const strengthFields = {
  yieldStrength: dimension({
    label: "Piston yield strength",
    symbol: "R_ps",
    unit: "MPa",
    range: ["80 MPa", "900 MPa"],
    tolerance: "5 %",
    help: "Yield strength of the piston’s alloy at 20 °C.",
    assumed: strengthByAlloy("piston.alloy", "yield", pistonAlloys),
  }),
  fatigueStrength: dimension({
    label: "Piston fatigue strength",
    symbol: "sigma_wp",
    unit: "MPa",
    range: ["30 MPa", "500 MPa"],
    tolerance: "10 %",
    help: "Stress amplitude about a mean of 0 that the piston’s alloy stands at 20 °C.",
    assumed: strengthByAlloy("piston.alloy", "fatigue", pistonAlloys),
  }),
};
