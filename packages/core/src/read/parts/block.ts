import { threadShearField } from "../fastener/threadShearField.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { boreFields } from "./block/boreFields.ts";
import { crankcaseFields } from "./block/crankcaseFields.ts";
import { cylinderFields } from "./block/cylinderFields.ts";
import { faceFields } from "./block/faceFields.ts";
import { housingFields } from "./block/housingFields.ts";
import { notchFields } from "./block/notchFields.ts";

const materials = {
  "grey-iron": "grey-iron",
  "compacted-iron": "compacted-iron",
  "ductile-iron": "ductile-iron",
  "cast-aluminium": "cast-aluminium",
  "billet-aluminium": "wrought-aluminium",
} as const;

/** The cylinder block and crankcase, as it will be after machining. */
export const block = part(
  {
    key: "block",
    id: "block",
    label: "Block",
    help: "The cylinder block and crankcase, as it will be used.",
  },
  {
    ...cylinderFields,
    ...boreFields,
    ...notchFields,
    ...faceFields,
    ...housingFields,
    threadShearStrength: threadShearField(
      "block.material",
      "tau_B",
      "the block’s metal, into which main and head fasteners are screwed",
      materials,
    ),
    ...crankcaseFields,
    expansion: expansionField("block.material", "b", materials),
    modulus: modulusField("block.material", "b", materials),
  },
);
