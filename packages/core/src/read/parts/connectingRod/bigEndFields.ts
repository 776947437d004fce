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
  alloy: choice({
    label: "Rod alloy",
    help: "Alloy and treatment of the rod: its strength, cold and hot, follows from it.",
    options: {
      "forged-steel":
        "forged carbon or micro-alloyed steel, cooled in air; most rods whose cap is broken off",
      "quenched-steel": "low-alloy steel, quenched and tempered",
      "powder-steel": "powder-metal steel, forged to density",
      "ductile-iron": "cast ductile iron",
      "titanium-6al-4v": "titanium alloy of 6 % aluminium and 4 % vanadium",
      "7075": "wrought aluminium alloy 7075",
      "2618": "wrought aluminium alloy 2618",
    },
    assumed: {
      byChoice: "connectingRod.material",
      values: {
        titanium: {
          value: "titanium-6al-4v",
          because: "titanium rods are of the alloy with 6 % aluminium and 4 % vanadium (common practice)",
        },
      },
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
  beamOffset: dimension({
    label: "Offset of the small end",
    symbol: "z_b",
    unit: "mm",
    range: ["-15 mm", "15 mm"],
    tolerance: "0.1",
    signs: { "away from the other rod": 1, "towards the other rod": -1 },
    help: "Distance along the crankshaft between the middle planes of big end and small end, of rods that share a crankpin.",
    assumed: {
      value: "0 mm ± 0",
      because: "both ends of a rod lie in one plane when nothing else is said (common practice)",
    },
  }),
};
