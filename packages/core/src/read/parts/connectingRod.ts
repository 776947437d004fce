import { choice, dimension } from "../fields.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { requireWholeOutline } from "../requireWholeOutline.ts";
import { table } from "../tableField.ts";

const materials = { steel: "steel", titanium: "titanium", aluminium: "wrought-aluminium" } as const;

/** One connecting rod with its cap. */
export const connectingRod = part(
  {
    key: "connectingRod",
    id: "connecting-rod",
    label: "Connecting rod",
    help: "One connecting rod with its cap.",
  },
  {
    length: dimension({
      label: "Rod length",
      symbol: "l",
      unit: "mm",
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
      range: ["15 mm", "150 mm"],
      tolerance: "0.006",
      help: "Bore of the big end with the bolts at their final stretch or torque, without the shells.",
    }),
    bigEndWidth: dimension({
      label: "Big-end width",
      symbol: "w",
      unit: "mm",
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
    bigEndOutline: table({
      label: "Outline of the big end",
      least: 3,
      most: 200,
      row: "{ along: 24 mm towards cap, across: 37.5 mm }",
      columns: {
        along: dimension({
          label: "Along",
          symbol: "u",
          unit: "mm",
          range: ["-400 mm", "400 mm"],
          signs: { "towards cap": -1, "towards pin": 1 },
          help: "Along the rod from the big-end centre.",
        }),
        across: dimension({
          label: "Across",
          symbol: "v",
          unit: "mm",
          range: ["0 mm", "400 mm"],
          help: "Across the rod from its axis.",
        }),
        cornerRadius: dimension({
          label: "Corner radius",
          symbol: "r_c",
          unit: "mm",
          range: ["0 mm", "400 mm"],
          help: "Radius of a rounded corner at this point.",
        }),
        arcRadius: dimension({
          label: "Arc radius",
          symbol: "r_a",
          unit: "mm",
          range: ["0 mm", "400 mm"],
          help: "Radius of an arc, bulging outwards, from the point before to this one.",
        }),
      },
      optional: ["cornerRadius", "arcRadius"],
      check: requireWholeOutline,
      help: "Half the outline of the big end, cap, bolt heads and lower beam in side view, from the middle of the cap past the bolt heads to the beam. A list of points, each { along: 24 mm towards cap, across: 37.5 mm }, with cornerRadius for a rounded corner or arcRadius for an arc from the point before; from a drawing or traced at full size.",
    }),
    outlineTolerance: dimension({
      label: "Outline uncertainty",
      symbol: "t_o",
      unit: "mm",
      range: ["-3 mm", "3 mm"],
      help: "How far the outline may lie outside (positive) or inside of the points given.",
      assumed: {
        value: "0 mm ± 0.2",
        because: "an outline traced or scaled from a drawing is good to about 0.2 mm (common practice)",
      },
    }),
    smallEndBore: dimension({
      label: "Small-end bore",
      symbol: "d_se",
      unit: "mm",
      range: ["8 mm", "80 mm"],
      tolerance: "0.004",
      help: "Finished bore of the small-end bush.",
    }),
    smallEndWidth: dimension({
      label: "Small-end width",
      symbol: "b_se",
      unit: "mm",
      range: ["8 mm", "90 mm"],
      tolerance: "0.05",
      help: "Width of the small end along the piston pin.",
    }),
    bigEndMass: dimension({
      label: "Big-end mass",
      symbol: "m_b",
      unit: "g",
      range: ["20 g", "5000 g"],
      tolerance: "1",
      help: "Rotating share: the big end weighed with the rod level and the small end supported.",
    }),
    smallEndMass: dimension({
      label: "Small-end mass",
      symbol: "m_s",
      unit: "g",
      range: ["10 g", "3000 g"],
      tolerance: "1",
      help: "Reciprocating share: the small end weighed with the rod level and the big end supported.",
    }),
    capMass: dimension({
      label: "Cap mass",
      symbol: "m_cap",
      unit: "g",
      range: ["10 g", "3000 g"],
      tolerance: "2",
      help: "Mass below the cap joint, bolts included.",
    }),
    beamArea: dimension({
      label: "Least beam section",
      symbol: "A_r",
      unit: "mm2",
      range: ["20 mm2", "3000 mm2"],
      tolerance: "5 %",
      help: "Smallest cross-section of the beam.",
    }),
    ratedSpeed: dimension({
      label: "Rated speed",
      symbol: "n_rod",
      unit: "rpm",
      range: ["1000 rpm", "25000 rpm"],
      help: "Highest speed for which the rod's maker rates it with parts of this mass.",
    }),
    expansion: expansionField("connectingRod.material", "r", materials),
    modulus: modulusField("connectingRod.material", "r", materials),
  },
);
