import { choice, dimension } from "../fields.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { faceFields } from "./head/faceFields.ts";

/** The head gasket. */
export const headGasket = part(
  { key: "headGasket", id: "head-gasket", label: "Head gasket", help: "The head gasket." },
  {
    kind: choice({
      label: "Kind of gasket",
      help: "What the head gasket is made of.",
      options: {
        "layered-steel": "layers of steel with embossed beads",
        composite: "soft facing on a metal core, with fire rings",
        copper: "solid copper",
      },
    }),
    bore: dimension({
      label: "Gasket bore",
      symbol: "B_g",
      unit: "mm",
      range: ["20 mm", "260 mm"],
      tolerance: "0.2",
      help: "Diameter of the round opening of the gasket.",
    }),
    compressedThickness: dimension({
      label: "Compressed thickness",
      symbol: "t_g",
      unit: "mm",
      range: ["0.1 mm", "6 mm"],
      tolerance: "0.05",
      help: "Thickness after tightening, from the maker's sheet or a crushed sample; not the free thickness.",
    }),
    freeThickness: dimension({
      label: "Free thickness",
      symbol: "t_g0",
      unit: "mm",
      range: ["0.1 mm", "8 mm"],
      tolerance: "0.05",
      help: "Thickness of the gasket before it is tightened for the first time.",
    }),
    clampShare: dimension({
      label: "Share of the clamp on the fire ring",
      symbol: "q_fr",
      unit: "%",
      range: ["10 %", "100 %"],
      tolerance: "10",
      help: "Part of the fasteners’ clamp that presses on the ring round the cylinder, the rest lying on the gasket’s body.",
      assumed: { value: "60 % ± 20", because: "40 to 80 % reach the fire ring (from memory)" },
    }),
    leastLineLoad: dimension({
      label: "Line load that the fire ring needs",
      symbol: "q_n",
      unit: "N/mm",
      range: ["20 N/mm", "1500 N/mm"],
      tolerance: "10 %",
      help: "Least force on each length of the ring round the cylinder at which it still seals, from the gasket maker.",
    }),
  },
);

const materials = { aluminium: "cast-aluminium", iron: "grey-iron" } as const;

/** The cylinder head. */
export const cylinderHead = part(
  {
    key: "cylinderHead",
    id: "cylinder-head",
    label: "Cylinder head",
    help: "The cylinder head with its valves and plug.",
  },
  {
    material: choice({
      label: "Head material",
      help: "What the head is cast or machined from.",
      options: { aluminium: "aluminium alloy", iron: "cast iron" },
    }),
    chamberVolume: dimension({
      label: "Chamber volume",
      symbol: "V_ch",
      unit: "cm3",
      per: "cylinder",
      measureBy: "trial-assembly",
      range: ["2 cm3", "400 cm3"],
      tolerance: "0.5",
      help: "Volume of one combustion chamber with valves and plug fitted, to the head face.",
    }),
    plannedMilling: dimension({
      label: "Milling still to be done",
      symbol: "m_pl",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.02",
      help: "Depth that is still to come off the head face after the chamber volume was measured.",
    }),
    chamberSpread: dimension({
      label: "Spread of the chamber volumes",
      symbol: "d_ch",
      unit: "cm3",
      measureBy: "trial-assembly",
      range: ["0 cm3", "20 cm3"],
      tolerance: "0.1",
      help: "Largest less smallest chamber of the engine, all measured the same way.",
    }),
    lowered: dimension({
      label: "Head lowered by",
      symbol: "m_h",
      unit: "mm",
      range: ["-5 mm", "10 mm"],
      tolerance: "0.05",
      help: "How much nearer to the crankshaft the head sits than it did: all that came off deck and head face, less what a thicker gasket adds. Negative when it sits higher.",
    }),
    inletFlangeAngle: dimension({
      label: "Angle of the inlet flange",
      symbol: "beta_f",
      unit: "deg",
      range: ["0 deg", "180 deg"],
      tolerance: "1",
      help: "Between the cylinder axis, away from the crankshaft, and the direction in which the inlet flange faces out of the head; 90° for a flange that stands along the cylinder.",
    }),
    chamberArea: dimension({
      label: "Chamber area at the face",
      symbol: "A_ch",
      unit: "cm2",
      range: ["3 cm2", "400 cm2"],
      tolerance: "3 %",
      help: "Area of the chamber’s opening in the head face, traced: it says how much volume goes with every tenth of a millimetre milled.",
    }),
    ...faceFields,
    squishEdgeLength: dimension({
      label: "Squish edge length",
      symbol: "L_e",
      unit: "mm",
      range: ["10 mm", "800 mm"],
      tolerance: "5 %",
      help: "Length of the edge of the squish band over which the charge leaves it into the chamber, all bands of one cylinder together; traced on the head face.",
    }),
    squish: choice({
      label: "Squish band",
      help: "Whether a flat of the head stands close over a flat of the piston.",
      options: { yes: "the chamber has a squish band", no: "none, or less than about 5 % of the bore area" },
    }),
    domeClearance: dimension({
      label: "Dome to chamber",
      symbol: "c_dc",
      unit: "mm",
      range: ["-5 mm", "60 mm"],
      tolerance: "0.2",
      help: "Least distance between the piston’s dome and the chamber, found with clay at trial assembly with the gasket that will be used.",
    }),
    plugClearance: dimension({
      label: "Spark plug to crown",
      symbol: "c_sp",
      unit: "mm",
      range: ["-5 mm", "60 mm"],
      tolerance: "0.2",
      help: "Least distance between the spark plug and the crown or its dome at top dead centre, found with clay at trial assembly.",
    }),
    expansion: expansionField("cylinderHead.material", "h", materials),
    modulus: modulusField("cylinderHead.material", "h", materials),
  },
);
