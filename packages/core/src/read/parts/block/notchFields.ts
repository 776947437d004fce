import { choice, dimension } from "../../fields.ts";

/** The notch at the bottom of a cylinder and the wall behind it. */
export const notchFields = {
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
      unless: ["block.notchDepth", "block.notchWidth"],
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
      unless: ["block.notchDepth", "block.notchHeight"],
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
      unless: ["block.notchDepth", "block.notchHeight", "block.notchWidth"],
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
  rodClearanceByClay: dimension({
    label: "Rod clearance by clay",
    symbol: "c_cl",
    unit: "mm",
    range: ["-5 mm", "60 mm"],
    tolerance: "0.2",
    help: "Least distance between rod and cylinder bottom, or the notch, found at trial assembly with modelling clay or wire: the least of all cylinders.",
  }),
  leastWall: dimension({
    label: "Least cylinder wall",
    symbol: "t_w",
    unit: "mm",
    range: ["0.5 mm", "40 mm"],
    tolerance: "0.15",
    help: "Thinnest wall of any cylinder after boring, by ultrasonic gauge, anywhere in the ring travel or at a notch, without any filler. Of a sleeved cylinder the sleeve alone.",
  }),
};
