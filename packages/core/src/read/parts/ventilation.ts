import { dimension } from "../fields.ts";
import { part } from "../part.ts";

/** How the crankcase breathes. */
export const ventilation = part(
  {
    key: "ventilation",
    id: "ventilation",
    label: "Crankcase ventilation",
    help: "How the gas that passes the rings leaves the crankcase.",
  },
  {
    area: dimension({
      label: "Vent area",
      symbol: "A_v",
      unit: "mm2",
      range: ["5 mm2", "20000 mm2"],
      tolerance: "5 %",
      help: "Open cross section of all vents together at their narrowest place: fittings, hoses and baffles.",
    }),
  },
);
