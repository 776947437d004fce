import { choice, dimension } from "../../fields.ts";

/** Length, material and big end. */
export const bigEndFields = {
  length: dimension({
    label: "Rod length",
    symbol: "l",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["40 mm", "500 mm"],
    tolerance: "0.03",
    help: "Centre of the big end to centre of the small end.",
  }),
  originalLength: dimension({
    label: "Original rod length",
    symbol: "l_1",
    unit: "mm",
    range: ["40 mm", "500 mm"],
    help: "Centre distance of the rod that the engine was made with.",
  }),
  material: choice({
    label: "Rod material",
    help: "Material of the rod.",
    options: {
      steel: "forged or machined steel",
      titanium: "titanium alloy",
      aluminium: "aluminium alloy",
    },
  }),
  bigEndBore: dimension({
    label: "Big-end housing bore",
    symbol: "D_Hr",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["15 mm", "150 mm"],
    tolerance: "0.006",
    help: "Bore of the big end with the bolts at their final stretch or torque, without the shells.",
  }),
  bigEndOuterDiameter: dimension({
    label: "Big-end outer diameter",
    symbol: "D_ro",
    unit: "mm",
    range: ["20 mm", "250 mm"],
    tolerance: "2",
    help: "Outer diameter of a ring as stiff as the big end: twice the distance from its centre to its outside at the thinnest places of cap and shoulder, bolt bosses left out.",
  }),
  bigEndWidth: dimension({
    label: "Big-end width",
    symbol: "w",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["8 mm", "100 mm"],
    tolerance: "0.03",
    help: "Width of the big end along the crankshaft.",
  }),
  planeOffset: dimension({
    label: "Rod plane offset",
    symbol: "z_0",
    unit: "mm",
    range: ["0 mm", "15 mm"],
    tolerance: "0.2",
    help: "Distance along the crankshaft between the rod's middle plane and the cylinder axis, whichever way.",
    assumed: {
      value: "0.5 mm ± 0.5",
      because: "rods stand up to about 1 mm off the cylinder's middle (common practice)",
    },
  }),
};
