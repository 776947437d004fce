import { choice, count, dimension } from "../fields.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";

const materials = {
  "cast-iron": "ductile-iron",
  "forged-steel": "steel",
  "nitrided-steel": "steel",
  "billet-steel": "steel",
} as const;

/** The crankshaft that will be used. */
export const crankshaft = part(
  { key: "crankshaft", id: "crankshaft", label: "Crankshaft", help: "The crankshaft that will be used." },
  {
    stroke: dimension({
      label: "Stroke",
      symbol: "S_0",
      unit: "mm",
      range: ["15 mm", "300 mm"],
      tolerance: "0.05",
      help: "Twice the throw radius, as on the crankshaft's sheet.",
    }),
    originalStroke: dimension({
      label: "Original stroke",
      symbol: "S_1",
      unit: "mm",
      range: ["15 mm", "300 mm"],
      help: "Stroke of the crankshaft that the block was made with.",
    }),
    material: choice({
      label: "Crankshaft material",
      help: "Material and process.",
      options: {
        "cast-iron": "cast ductile iron",
        "forged-steel": "forged steel",
        "nitrided-steel": "forged steel, nitrided",
        "billet-steel": "machined from solid steel",
      },
    }),
    rodsPerPin: count({
      label: "Rods on one crankpin",
      symbol: "n_r",
      help: "Connecting rods that share one crankpin.",
      least: 1,
      most: 2,
    }),
    mainJournalDiameter: dimension({
      label: "Main journal diameter",
      symbol: "D_m",
      unit: "mm",
      range: ["15 mm", "150 mm"],
      tolerance: "0.008",
      help: "Diameter of the main journals, at 20 °C.",
    }),
    crankpinDiameter: dimension({
      label: "Crankpin diameter",
      symbol: "D_p",
      unit: "mm",
      range: ["12 mm", "130 mm"],
      tolerance: "0.008",
      help: "Diameter of the crankpin, at 20 °C.",
    }),
    crankpinLength: dimension({
      label: "Crankpin length",
      symbol: "L_cp",
      unit: "mm",
      range: ["8 mm", "200 mm"],
      tolerance: "0.05",
      help: "Between the cheeks.",
    }),
    counterweightRadius: dimension({
      label: "Counterweight radius",
      symbol: "R_cw",
      unit: "mm",
      range: ["20 mm", "300 mm"],
      tolerance: "0.2",
      help: "Outer radius of the counterweights round the crankshaft axis.",
    }),
    counterweightHalfSpan: dimension({
      label: "Counterweight half span",
      symbol: "psi_cw",
      unit: "deg",
      range: ["10 deg", "180 deg"],
      tolerance: "2",
      help: "Half the angle that a counterweight spans, seen from the crankshaft axis, about the line opposite the crankpin.",
    }),
    expansion: expansionField("crankshaft.material", "c", materials),
    modulus: modulusField("crankshaft.material", "c", materials),
  },
);
