import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";
import { shellFields } from "./bearings/shellFields.ts";

/** The shells of the main bearings. */
export const mainBearing = part(
  {
    key: "mainBearing",
    id: "main-bearing",
    label: "Main bearings",
    help: "The shells of the main bearings.",
    exchangeable: true,
  },
  {
    ...shellFields("main", "the lower main shell", "main"),
    thrustWebWidth: dimension({
      label: "Web at the thrust bearing",
      symbol: "w_th",
      unit: "mm",
      range: ["5 mm", "140 mm"],
      tolerance: "0.02",
      help: "Width of the block’s web and cap between the two thrust washers.",
    }),
    thrustWasher: dimension({
      label: "Thrust washer",
      symbol: "t_th",
      unit: "mm",
      range: ["0.5 mm", "8 mm"],
      tolerance: "0.02",
      help: "Thickness of one thrust washer or flange.",
    }),
    thrustArea: dimension({
      label: "Thrust area",
      symbol: "A_th",
      unit: "mm2",
      range: ["50 mm2", "20000 mm2"],
      tolerance: "5 %",
      help: "Area of the thrust face that takes the load, its oil grooves taken off.",
    }),
    thrustLoad: dimension({
      label: "Thrust load",
      symbol: "F_th",
      unit: "N",
      range: ["0 N", "20000 N"],
      tolerance: "10 %",
      help: "Force along the crankshaft that the clutch, when it is let out, or the torque converter lays on the thrust bearing.",
    }),
    endPlay: dimension({
      label: "Measured end play",
      symbol: "E_m",
      unit: "mm",
      range: ["0 mm", "1 mm"],
      tolerance: "0.01",
      help: "How far the crankshaft can be levered to and fro along its axis, by an indicator on its end. It outranks the end play from sizes.",
    }),
    clearanceSpread: dimension({
      label: "Spread of the main clearances",
      symbol: "d_Cm",
      unit: "mm",
      range: ["0 mm", "0.3 mm"],
      tolerance: "0.003",
      help: "Largest less least oil clearance of all main bearings, every one measured the same way.",
    }),
    groove: choice({
      label: "Oil groove",
      help: "How far the oil groove goes round the main bearings.",
      options: {
        upper: "a groove in the upper shell only",
        full: "a groove all round",
      },
      assumed: {
        value: "upper",
        because: "main shells with a groove in the upper half are usual (common practice)",
      },
    }),
    landWidth: dimension({
      label: "Land beside the groove",
      symbol: "l_g",
      unit: "mm",
      range: ["1 mm", "60 mm"],
      tolerance: "0.2",
      help: "Width of the plain land on each side of the oil groove.",
    }),
  },
);

/** The shells of the big-end bearings. */
export const rodBearing = part(
  {
    key: "rodBearing",
    id: "rod-bearing",
    label: "Rod bearings",
    help: "The shells of the big-end bearings.",
    exchangeable: true,
  },
  {
    ...shellFields("rod", "the upper rod shell", "cylinder"),
    rollerDiameter: dimension({
      label: "Roller diameter",
      symbol: "d_rol",
      unit: "mm",
      range: ["1 mm", "20 mm"],
      tolerance: "0.001",
      help: "Diameter of the rollers between crankpin and big end, where the big end runs on rollers.",
    }),
    mass: dimension({
      label: "Mass of both shells",
      symbol: "m_sh",
      unit: "g",
      range: ["2 g", "800 g"],
      tolerance: "3 %",
      help: "Mass of the two shells of one rod.",
    }),
  },
);
