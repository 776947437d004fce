import { choice, dimension } from "../fields.ts";
import { expansionField } from "../materialFields.ts";
import { part } from "../part.ts";

/** A dry liner: pressed or shrunk into the block, which touches it over its length. */
export const liner = part(
  {
    key: "liner",
    id: "liner",
    label: "Dry liner",
    help: "A dry liner, where the cylinders are lined: pressed or shrunk into the block.",
  },
  {
    material: choice({
      label: "Liner material",
      help: "What the liner is made of.",
      options: { "grey-iron": "grey cast iron", "ductile-iron": "ductile cast iron", steel: "steel" },
    }),
    outerDiameter: dimension({
      label: "Liner outer diameter",
      symbol: "D_li",
      unit: "mm",
      range: ["20 mm", "280 mm"],
      tolerance: "0.005",
      help: "Outer diameter of the liner where it sits in the block.",
    }),
    interference: dimension({
      label: "Liner interference",
      symbol: "delta_li",
      unit: "mm",
      range: ["-0.2 mm", "0.4 mm"],
      tolerance: "0.01",
      help: "Outer diameter of the liner less the bore of the block, both at 20 °C: positive when it must be pressed or shrunk in, negative when it slips.",
    }),
    expansion: expansionField("liner.material", "li", {
      "grey-iron": "grey-iron",
      "ductile-iron": "ductile-iron",
      steel: "steel",
    }),
  },
);
