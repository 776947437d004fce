import { ringPackDepth as depthOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const ringPackDepth = quantity({
  id: "ringPackDepth",
  name: "Depth of the ring pack",
  symbol: "h_rp",
  unit: "mm",
  decimals: 2,
  system: "rings",
  meaning:
    "From the flat of the crown down to the lower face of the oil ring’s groove: all lands and grooves added up.",
  inputs: {
    h_1: "piston.topLandHeight",
    g_1: "piston.topGrooveHeight",
    h_2: "piston.secondLandHeight",
    g_2: "piston.secondGrooveHeight",
    h_3: "piston.thirdLandHeight",
    g_3: "piston.oilGrooveHeight",
  },
  formula: "h_1 + g_1 + h_2 + g_2 + h_3 + g_3",
  compute: ({ h_1, g_1, h_2, g_2, h_3, g_3 }) => depthOf([h_1, g_1, h_2, g_2, h_3, g_3]),
  shape: "monotone",
  valid: "three-ring pistons",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: { h_1: "7 mm", g_1: "1.23 mm", h_2: "4.2 mm", g_2: "1.23 mm", h_3: "2.6 mm", g_3: "2.83 mm" },
      expect: "19.09 mm",
    },
  ],
});
