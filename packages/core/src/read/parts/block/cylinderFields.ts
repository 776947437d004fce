import { choice, count, dimension } from "../../fields.ts";

/** Layout, bores and decks. */
export const cylinderFields = {
  layout: choice({
    label: "Layout",
    help: "How the cylinders stand.",
    options: {
      single: "one cylinder",
      inline: "cylinders in one row",
      vee: "two banks at an angle",
      flat: "two banks opposed",
    },
  }),
  cylinders: count({ label: "Number of cylinders", symbol: "z", help: "Counted.", least: 1, most: 12 }),
  bankAngle: dimension({
    label: "Bank angle",
    symbol: "gamma",
    unit: "deg",
    range: ["0 deg", "180 deg"],
    exact:
      "the angle of the drawing; what machining leaves of it is of no account beside the index error of the throws",
    help: "Angle between the two banks; 0 for a single row.",
    assumed: {
      byChoice: "block.layout",
      values: {
        single: { value: "0 deg", because: "one cylinder has no banks" },
        inline: { value: "0 deg", because: "cylinders in one row have no banks" },
        flat: { value: "180 deg", because: "opposed banks lie half a turn apart" },
      },
    },
  }),
  mainBearings: count({
    label: "Number of main bearings",
    symbol: "n_main",
    help: "Counted.",
    least: 2,
    most: 13,
  }),
  material: choice({
    label: "Block material",
    help: "What the crankcase and the threads in it are made of.",
    options: {
      "grey-iron": "grey cast iron",
      "compacted-iron": "compacted graphite iron",
      "ductile-iron": "ductile (nodular) iron",
      "cast-aluminium": "cast aluminium alloy",
      "billet-aluminium": "machined from solid aluminium alloy",
    },
  }),
  bore: dimension({
    label: "Finished bore",
    symbol: "B",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    form: { taper: "block.boreTaper", outOfRound: "block.boreOutOfRound" },
    range: ["20 mm", "250 mm"],
    tolerance: "0.01",
    help: "Cylinder diameter after honing, at 20 °C, with the torque plate fitted.",
  }),
  deckHeight: dimension({
    label: "Deck height",
    symbol: "H",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["60 mm", "700 mm"],
    tolerance: "0.1",
    help: "From the crankshaft axis to the deck (the face that carries the head gasket), square to the axis.",
  }),
  deckHeightSpread: dimension({
    label: "Spread of the deck heights",
    symbol: "d_H",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "2 mm"],
    tolerance: "0.01",
    help: "Largest less smallest deck height, measured at the four corners of every deck.",
  }),
  cylinderBottomHeight: dimension({
    label: "Cylinder bottom height",
    symbol: "y_b",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["10 mm", "400 mm"],
    tolerance: "0.5",
    help: "From the crankshaft axis up to the lower edge of the cylinder, where the rod swings. A casting edge: take the least height of all cylinders and both sides; let the tolerance reach the highest.",
  }),
  cylinderAxisOffset: dimension({
    label: "Cylinder axis offset",
    symbol: "e_c",
    unit: "mm",
    range: ["-30 mm", "30 mm"],
    tolerance: "0.05",
    help: "From the crankshaft axis to the cylinder axis; positive towards the side to which the crankpin moves after top dead centre.",
    assumed: {
      value: "0 mm ± 0.05",
      because: "cylinders over the crankshaft axis are usual (common practice)",
    },
  }),
};
