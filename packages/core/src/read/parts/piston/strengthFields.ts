import { pistonAlloys } from "../../../tables/alloys.ts";
import { strengthByAlloy } from "../../../tables/strengthByAlloy.ts";
import { choice, dimension } from "../../fields.ts";

const cast = { value: "cast", because: "pistons of this alloy are cast (common practice)" };
const forged = { value: "forged", because: "pistons of this alloy are forged (common practice)" };

/** How the piston is made, and the strength of its alloy, cold. */
export const strengthFields = {
  process: choice({
    label: "Piston process",
    help: "How the piston’s blank is made.",
    options: { cast: "cast", forged: "forged", billet: "cut from wrought bar" },
    assumed: {
      byChoice: "piston.alloy",
      values: { "2618": forged, "4032": forged, hypereutectic: cast, eutectic: cast },
    },
  }),
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
