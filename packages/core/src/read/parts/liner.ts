import { choice, dimension } from "../fields.ts";
import { expansionField } from "../materialFields.ts";
import { part } from "../part.ts";

/** A liner: dry, which the block touches over its length, or wet, which stands in the coolant. */
export const liner = part(
  {
    key: "liner",
    id: "liner",
    label: "Liner",
    help: "The liners, where the cylinders are lined: dry ones pressed or shrunk into the block, or wet ones that stand in the coolant.",
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
    protrusion: dimension({
      label: "Liner protrusion",
      symbol: "h_li",
      unit: "mm",
      per: "cylinder",
      range: ["-0.5 mm", "1 mm"],
      tolerance: "0.01",
      help: "How far the flange of a wet liner stands above the deck with the liner held down; negative when below it.",
    }),
    expansion: expansionField("liner.material", "li", {
      "grey-iron": "grey-iron",
      "ductile-iron": "ductile-iron",
      steel: "steel",
    }),
  },
);
