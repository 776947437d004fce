import { expansionField, modulusField } from "../materialFields.ts";
import { part } from "../part.ts";
import { bossFields } from "./piston/bossFields.ts";
import { crownFields } from "./piston/crownFields.ts";
import { grooveFields } from "./piston/grooveFields.ts";
import { skirtFields } from "./piston/skirtFields.ts";
import { strengthFields } from "./piston/strengthFields.ts";

const materials = {
  "2618": "aluminium-2618",
  "4032": "aluminium-4032",
  hypereutectic: "aluminium-4032",
  eutectic: "aluminium-4032",
} as const;

/** One piston, without its pin and rings. */
export const piston = part(
  {
    key: "piston",
    id: "piston",
    label: "Piston",
    help: "One piston, without its pin and rings.",
    exchangeable: true,
  },
  {
    ...crownFields,
    ...grooveFields,
    ...bossFields,
    ...skirtFields,
    ...strengthFields,
    expansion: expansionField("piston.alloy", "p", materials),
    modulus: modulusField("piston.alloy", "p", materials),
  },
);
