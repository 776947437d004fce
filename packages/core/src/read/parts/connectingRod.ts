import { threadShearField } from "../fastener/threadShearField.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { beamFields } from "./connectingRod/beamFields.ts";
import { bigEndFields } from "./connectingRod/bigEndFields.ts";
import { massFields } from "./connectingRod/massFields.ts";
import { outlineFields } from "./connectingRod/outlineFields.ts";

const materials = { steel: "steel", titanium: "titanium", aluminium: "wrought-aluminium" } as const;

/** One connecting rod with its cap. */
export const connectingRod = part(
  {
    key: "connectingRod",
    id: "connecting-rod",
    label: "Connecting rod",
    help: "One connecting rod with its cap.",
    exchangeable: true,
  },
  {
    ...bigEndFields,
    ...outlineFields,
    ...massFields,
    ...beamFields,
    threadShearStrength: threadShearField(
      "connectingRod.material",
      "tau_R",
      "the rod’s metal, into which the rod bolts are screwed",
      { steel: "steel", titanium: "titanium", aluminium: "forged-aluminium" },
    ),
    expansion: expansionField("connectingRod.material", "r", materials),
    modulus: modulusField("connectingRod.material", "r", materials),
  },
);
