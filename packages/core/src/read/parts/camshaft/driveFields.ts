import { choice, dimension } from "../../fields.ts";

/** How the camshaft is driven and held. */
export const driveFields = {
  bearingClearance: dimension({
    label: "Camshaft bearing clearance",
    symbol: "C_cam",
    unit: "mm",
    range: ["-0.1 mm", "0.5 mm"],
    tolerance: "0.008",
    help: "Bore of a fitted camshaft bearing less its journal, across the diameter, by bore gauge and micrometer.",
  }),
  journalDiameter: dimension({
    label: "Camshaft journal diameter",
    symbol: "D_cam",
    unit: "mm",
    range: ["10 mm", "90 mm"],
    tolerance: "0.01",
    help: "Diameter of the camshaft’s largest bearing journal.",
  }),
  rotation: choice({
    label: "Sense of rotation",
    help: "Which way the camshaft turns, seen from the same end as the crankshaft.",
    options: {
      "as-crankshaft": "the same way: chain, belt, or gears with one between",
      "against-crankshaft": "the other way: a pair of gears",
    },
    assumed: {
      value: "as-crankshaft",
      because: "most camshafts in a block are driven by a chain (common practice)",
    },
  }),
  sprocketRadius: dimension({
    label: "Crankshaft sprocket radius",
    symbol: "R_sp",
    unit: "mm",
    range: ["10 mm", "100 mm"],
    tolerance: "0.05",
    help: "Pitch radius of the sprocket or pulley on the crankshaft that drives the camshaft.",
  }),
  centreDistanceLoss: dimension({
    label: "Loss of centre distance",
    symbol: "m_c",
    unit: "mm",
    range: ["0 mm", "5 mm"],
    tolerance: "0.02",
    help: "How much nearer an overhead camshaft came to the crankshaft by machining deck and head, less a thicker gasket.",
  }),
  endPlay: dimension({
    label: "Camshaft end play",
    symbol: "c_ce",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "2 mm"],
    tolerance: "0.02",
    help: "How far the camshaft can be moved lengthwise with its thrust plate or cover fitted, by dial indicator.",
  }),
};
