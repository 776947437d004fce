import { dimension } from "../../fields.ts";
import { requireWholeOutline } from "../../requireWholeOutline.ts";
import { table } from "../../tableField.ts";

/** The big end in side view. */
export const outlineFields = {
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
    tolerance: "0.1",
    help: "How far the outline may lie outside (positive) or inside of the points given.",
    assumed: {
      value: "0 mm ± 0.2",
      because: "an outline traced or scaled from a drawing is good to about 0.2 mm (common practice)",
    },
  }),
};
