import { dimension } from "../fields.ts";
import { part } from "../part.ts";

/** What the engine drives. */
export const driveline = part(
  {
    key: "driveline",
    id: "driveline",
    label: "Driveline",
    help: "What stands between engine and road.",
    bought: false,
  },
  {
    totalRatio: dimension({
      label: "Total reduction",
      symbol: "i_t",
      unit: "1",
      range: ["0.5", "200"],
      exact: "numbers of teeth give it",
      help: "Turns of the engine for one turn of the driven wheels, in the gear looked at.",
    }),
    tyreRadius: dimension({
      label: "Tyre radius",
      symbol: "R_w",
      unit: "mm",
      range: ["100 mm", "1000 mm"],
      tolerance: "2 %",
      help: "Rolling radius of the driven tyres.",
    }),
  },
);
