import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The piston pin (gudgeon pin, wrist pin). */
export const pistonPin = part(
  {
    key: "pistonPin",
    id: "piston-pin",
    label: "Piston pin",
    help: "The piston pin, also called gudgeon pin or wrist pin.",
    exchangeable: true,
  },
  {
    outerDiameter: dimension({
      label: "Pin diameter",
      symbol: "d_p",
      unit: "mm",
      per: "cylinder",
      measureBy: "trial-assembly",
      range: ["8 mm", "80 mm"],
      tolerance: "0.0025",
      help: "Outer diameter.",
    }),
    innerDiameter: dimension({
      label: "Pin inner diameter",
      symbol: "d_i",
      unit: "mm",
      range: ["0 mm", "70 mm"],
      tolerance: "0.2",
      help: "Bore of the pin at its middle.",
    }),
    length: dimension({
      label: "Pin length",
      symbol: "l_p",
      unit: "mm",
      per: "cylinder",
      measureBy: "trial-assembly",
      range: ["15 mm", "220 mm"],
      tolerance: "0.05",
      help: "End to end.",
    }),
    mass: dimension({
      label: "Pin mass",
      symbol: "m_pin",
      unit: "g",
      per: "cylinder",
      measureBy: "machine",
      range: ["5 g", "2000 g"],
      tolerance: "0.5",
      help: "Pin with its retainers.",
    }),
    coating: choice({
      label: "Pin coating",
      help: "Coating of the pin's running surface.",
      options: {
        none: "bare steel, polished or phosphated",
        "diamond-like-carbon": "diamond-like carbon",
        "chromium-nitride": "chromium nitride",
      },
    }),
    bossFit: choice({
      label: "Fit of the pin in its bosses",
      help: "How the pin sits in the bosses of the cold piston, as the piston's maker means it.",
      options: {
        free: "moves in the bosses, whether it floats or is pressed into the rod",
        "warm-fitted": "tight in the cold piston, slid in while the piston is warm; many vintage pistons",
      },
      assumed: {
        value: "free",
        because: "pins move in their bosses when nothing else is said (common practice)",
      },
    }),
    steel: choice({
      label: "Pin steel",
      help: "Kind of steel of the pin: what is left of its strength when it is hot follows from it.",
      options: {
        "case-hardened": "case-hardened steel",
        "hot-work": "hot-work tool steel of 5 % chromium",
      },
      assumed: {
        value: "case-hardened",
        because: "piston pins are of case-hardened steel when nothing else is said (common practice)",
      },
    }),
    allowableStress: dimension({
      label: "Allowable stress",
      symbol: "R_pin",
      unit: "MPa",
      range: ["150 MPa", "1500 MPa"],
      exact: "a limit that its maker or the builder sets, not a size that is measured",
      help: "Bending stress that the maker allows in this steel.",
    }),
  },
);
