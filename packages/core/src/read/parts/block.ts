import { choice, count, dimension } from "../fields.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";

const materials = {
  "grey-iron": "grey-iron",
  "compacted-iron": "compacted-iron",
  "ductile-iron": "ductile-iron",
  "cast-aluminium": "cast-aluminium",
  "billet-aluminium": "wrought-aluminium",
} as const;

/** The cylinder block and crankcase, as it will be after machining. */
export const block = part(
  {
    key: "block",
    id: "block",
    label: "Block",
    help: "The cylinder block and crankcase, as it will be used.",
  },
  {
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
      help: "Angle between the two banks; 0 for a single row.",
      assumed: {
        value: "0 deg",
        because: "no bank angle is given: the cylinders are taken to stand in one row",
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
      range: ["20 mm", "250 mm"],
      tolerance: "0.01",
      help: "Cylinder diameter after honing, at 20 °C, with the torque plate fitted.",
    }),
    deckHeight: dimension({
      label: "Deck height",
      symbol: "H",
      unit: "mm",
      range: ["60 mm", "700 mm"],
      tolerance: "0.1",
      help: "From the crankshaft axis to the deck (the face that carries the head gasket), square to the axis.",
    }),
    cylinderBottomHeight: dimension({
      label: "Cylinder bottom height",
      symbol: "y_b",
      unit: "mm",
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
    notchDepth: dimension({
      label: "Rod notch depth",
      symbol: "p_n",
      unit: "mm",
      range: ["0 mm", "20 mm"],
      tolerance: "0.3",
      help: "How deep the notch for the rod is, measured straight outwards from the bore surface where the side face of the rod passes (half the rod's width from its middle).",
      assumed: {
        value: "0 mm ± 0",
        because: "no notch is entered: the cylinder bottom is taken as uncut",
        unless: ["block.notchHeight", "block.notchWidth"],
      },
    }),
    notchHeight: dimension({
      label: "Rod notch height",
      symbol: "q_n",
      unit: "mm",
      range: ["0 mm", "60 mm"],
      tolerance: "0.5",
      help: "How far the notch reaches up from the lower edge of the cylinder.",
      assumed: {
        value: "0 mm ± 0",
        because: "no notch is entered: the cylinder bottom is taken as uncut",
        unless: ["block.notchDepth"],
      },
    }),
    notchWidth: dimension({
      label: "Rod notch width",
      symbol: "W_n",
      unit: "mm",
      range: ["0 mm", "120 mm"],
      tolerance: "0.5",
      help: "Width of the notch along the crankshaft.",
      assumed: {
        value: "0 mm ± 0",
        because: "no notch is entered: the cylinder bottom is taken as uncut",
        unless: ["block.notchDepth"],
      },
    }),
    notchCornerRadius: dimension({
      label: "Rod notch corner radius",
      symbol: "r_n",
      unit: "mm",
      range: ["0 mm", "20 mm"],
      tolerance: "0.5",
      help: "Radius left by the cutter at the top and the ends of the notch; the larger.",
      assumed: {
        // A notch of depth 0 ignores it; the sizes of a notch that is still to be cut do not.
        value: "3 mm ± 0",
        because: "no corner radius is entered: 3 mm is the usual cutter (common practice)",
        unless: ["block.notchDepth"],
      },
    }),
    notchFloor: choice({
      label: "Rod notch floor",
      help: "Shape of the notch's floor along the crankshaft.",
      options: {
        flat: "cut straight across: deepest at its ends",
        "follows-bore": "ground round, equally deep everywhere",
      },
      assumed: { value: "flat", because: "a flat floor takes the most of the wall" },
    }),
    leastWall: dimension({
      label: "Least cylinder wall",
      symbol: "t_w",
      unit: "mm",
      range: ["0.5 mm", "40 mm"],
      tolerance: "0.15",
      help: "Thinnest wall of any cylinder after boring, by ultrasonic gauge, anywhere in the ring travel or at a notch, without any filler. Of a sleeved cylinder the sleeve alone.",
    }),
    mainHousingBore: dimension({
      label: "Main bearing housing bore",
      symbol: "D_Hm",
      unit: "mm",
      range: ["20 mm", "200 mm"],
      tolerance: "0.01",
      help: "Bore of the main bearing housing with the cap tightened as in the final build.",
    }),
    crankcaseRadius: dimension({
      label: "Free radius in the crankcase",
      symbol: "R_cc",
      unit: "mm",
      range: ["30 mm", "400 mm"],
      tolerance: "0.3",
      help: "Radius round the crankshaft axis that is free of metal at the counterweights.",
    }),
    threadShearStrength: dimension({
      label: "Shear strength of the threads",
      symbol: "tau_B",
      unit: "MPa",
      range: ["50 MPa", "600 MPa"],
      help: "Shear strength of the block’s metal, into which main and head fasteners are screwed.",
      assumed: {
        byChoice: "block.material",
        values: {
          "grey-iron": {
            value: "200 MPa ± 40",
            because: "grey iron shears at about 160 to 240 MPa (from memory)",
          },
          "compacted-iron": {
            value: "300 MPa ± 40",
            because: "compacted graphite iron shears at about 260 to 340 MPa (from memory)",
          },
          "ductile-iron": {
            value: "360 MPa ± 40",
            because: "ductile iron shears at about 320 to 400 MPa (from memory)",
          },
          "cast-aluminium": {
            value: "150 MPa ± 30",
            because: "cast aluminium alloys shear at about 120 to 180 MPa (from memory)",
          },
          "billet-aluminium": {
            value: "200 MPa ± 30",
            because: "wrought aluminium alloys shear at about 170 to 230 MPa (from memory)",
          },
        },
      },
    }),
    expansion: expansionField("block.material", "b", materials),
    modulus: modulusField("block.material", "b", materials),
  },
);
