import { dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The piston rings of one cylinder. */
export const ringSet = part(
  { key: "ringSet", id: "ring-set", label: "Ring set", help: "The piston rings of one cylinder." },
  {
    topRingHeight: dimension({
      label: "Top ring height",
      symbol: "h_r1",
      unit: "mm",
      range: ["0.4 mm", "6 mm"],
      tolerance: "0.01",
      help: "Axial height.",
    }),
    topRingRadialThickness: dimension({
      label: "Top ring radial thickness",
      symbol: "a_1",
      unit: "mm",
      range: ["0.8 mm", "15 mm"],
      tolerance: "0.1",
      help: "From the running face to the inside of the ring.",
    }),
    topRingEndGap: dimension({
      label: "Top ring end gap",
      symbol: "s_1",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.02",
      help: "With the ring square in its own finished bore, by feeler gauge.",
    }),
    secondRingEndGap: dimension({
      label: "Second ring end gap",
      symbol: "s_2",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.02",
      help: "With the ring square in its own finished bore, by feeler gauge.",
    }),
    mass: dimension({
      label: "Ring set mass",
      symbol: "m_rings",
      unit: "g",
      range: ["2 g", "500 g"],
      tolerance: "0.5",
      help: "All rings of one piston.",
    }),
  },
);
