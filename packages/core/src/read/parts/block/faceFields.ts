import { choice, dimension } from "../../fields.ts";

/** Deck, main bores in line, and how the cylinders are lined. */
export const faceFields = {
  cylinderKind: choice({
    label: "Kind of cylinder",
    help: "Whether the pistons run in the block itself or in liners.",
    options: {
      parent: "bored in the block itself, plated bores too",
      "dry-liner": "dry liners, which the block touches over their length",
      "wet-liner": "wet liners, with coolant against them",
    },
    assumed: {
      value: "parent",
      because: "no liner is entered: the cylinders are taken to be bored in the block itself",
      unless: ["liner.outerDiameter", "liner.interference", "liner.material", "liner.protrusion"],
    },
  }),
  mainBoreMisalignment: dimension({
    label: "Main bores out of line",
    symbol: "e_mb",
    unit: "mm",
    range: ["0 mm", "0.5 mm"],
    tolerance: "0.001",
    help: "How far the middles of two neighbouring main bores stand out of line, by a ground bar or an alignment gauge with the caps tightened; the worst pair.",
  }),
  deckThickness: dimension({
    label: "Deck thickness",
    symbol: "t_d",
    unit: "mm",
    range: ["2 mm", "60 mm"],
    tolerance: "0.3",
    help: "Least thickness of the deck between head and water jacket after machining, by ultrasonic gauge.",
  }),
  deckRoughness: dimension({
    label: "Deck roughness Ra",
    symbol: "Ra_d",
    unit: "um",
    range: ["0.05 um", "10 um"],
    tolerance: "10 %",
    help: "Arithmetic mean roughness of the finished deck.",
  }),
  deckFlatness: dimension({
    label: "Deck out of flat",
    symbol: "f_d",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "1 mm"],
    tolerance: "0.01",
    help: "Widest gap under a straight edge laid along, across and over the corners of the finished deck.",
  }),
};
