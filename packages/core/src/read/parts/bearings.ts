import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

const linings = {
  "white-metal": "tin-based white metal",
  "aluminium-tin": "aluminium-tin or aluminium-silicon",
  "copper-lead": "copper-lead or lead bronze with overlay",
  sputtered: "sputtered or other vapour-deposited overlay",
};

function shellFields(where: string, loaded: string) {
  return {
    wall: dimension({
      label: "Shell wall",
      symbol: "t_s",
      unit: "mm",
      range: ["0.5 mm", "10 mm"],
      tolerance: "0.004",
      help: `Wall of one ${where} bearing shell at its crown, square to the joint.`,
    }),
    length: dimension({
      label: "Effective shell length",
      symbol: "L",
      unit: "mm",
      range: ["4 mm", "150 mm"],
      tolerance: "0.1",
      help: `Length along the crankshaft of the shell that takes the gas load (${loaded}), its chamfers and its own grooves taken off.`,
    }),
    lining: choice({ label: "Lining", help: "Class of the running layer.", options: linings }),
  };
}

/** The shells of the main bearings. */
export const mainBearing = part(
  {
    key: "mainBearing",
    id: "main-bearing",
    label: "Main bearings",
    help: "The shells of the main bearings.",
  },
  shellFields("main", "the lower main shell"),
);

/** The shells of the big-end bearings. */
export const rodBearing = part(
  {
    key: "rodBearing",
    id: "rod-bearing",
    label: "Rod bearings",
    help: "The shells of the big-end bearings.",
  },
  shellFields("rod", "the upper rod shell"),
);
