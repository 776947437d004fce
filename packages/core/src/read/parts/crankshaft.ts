import { threadShearField } from "../fastener/threadShearField.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { balanceFields } from "./crankshaft/balanceFields.ts";
import { formFields } from "./crankshaft/formFields.ts";
import { journalFields } from "./crankshaft/journalFields.ts";
import { surfaceFields } from "./crankshaft/surfaceFields.ts";
import { throwFields } from "./crankshaft/throwFields.ts";
import { torsionFields } from "./crankshaft/torsionFields.ts";

const materials = {
  "cast-iron": "ductile-iron",
  "forged-steel": "steel",
  "nitrided-steel": "steel",
  "billet-steel": "steel",
} as const;

/** The crankshaft that will be used. */
export const crankshaft = part(
  { key: "crankshaft", id: "crankshaft", label: "Crankshaft", help: "The crankshaft that will be used." },
  {
    ...journalFields,
    ...throwFields,
    ...balanceFields,
    ...torsionFields,
    ...surfaceFields,
    ...formFields,
    threadShearStrength: threadShearField(
      "crankshaft.material",
      "tau_C",
      "the crankshaft’s metal, into which the flywheel fasteners are screwed",
      materials,
    ),
    expansion: expansionField("crankshaft.material", "c", materials),
    modulus: modulusField("crankshaft.material", "c", materials),
  },
);
