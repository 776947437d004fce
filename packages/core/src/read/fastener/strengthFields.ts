import { propertyClasses } from "../../tables/propertyClasses.ts";
import { choice, dimension } from "../fields.ts";
import { expansionField, modulusField } from "../materialFields.ts";
import { valuesOf, wordsOf } from "./eachOf.ts";

const metals = { steel: "steel", austenitic: "austenitic-steel", titanium: "titanium" } as const;

/**
 * Metal and strengths of a fastener, which its class gives where its maker does not.
 * @param key of the part in the build file
 */
export function strengthFields(key: string) {
  const byClass = (of: "yield" | "tensile") => ({
    byChoice: `${key}.propertyClass`,
    values: valuesOf(
      propertyClasses,
      (one) => `${Math.round(one[of])} MPa ± 0`,
      ({ name }) => `least ${of === "yield" ? "yield" : "tensile"} strength of ${name}`,
    ),
  });
  return {
    material: choice({
      label: "Fastener metal",
      help: "What the fastener is made of: its stiffness and growth follow from it.",
      options: {
        steel: "alloy or tool steel",
        austenitic: "austenitic (not magnetic) steel",
        titanium: "titanium alloy",
      },
      assumed: { value: "steel", because: "engine fasteners are of alloy steel (common practice)" },
    }),
    expansion: expansionField(`${key}.material`, "s", metals),
    modulus: modulusField(`${key}.material`, "s", metals),
    propertyClass: choice({
      label: "Property class",
      help: "Class or grade that is marked on the head; left out where the maker states strengths.",
      options: wordsOf(propertyClasses, ({ name }) => name),
    }),
    yieldStrength: dimension({
      label: "Yield strength",
      symbol: "R_p",
      unit: "MPa",
      range: ["200 MPa", "2500 MPa"],
      exact: "the least that its class or its maker promises; no fastener is weaker",
      help: "Yield strength or 0.2 % proof strength from the maker's sheet or the property class.",
      assumed: byClass("yield"),
    }),
    tensileStrength: dimension({
      label: "Tensile strength",
      symbol: "R_m",
      unit: "MPa",
      range: ["250 MPa", "2800 MPa"],
      exact: "the least that its class or its maker promises; no fastener is weaker",
      help: "Tensile strength from the maker's sheet or the property class.",
      assumed: byClass("tensile"),
    }),
    enduranceStrength: dimension({
      label: "Endurance strength of the thread",
      symbol: "S_e",
      unit: "MPa",
      range: ["20 MPa", "400 MPa"],
      tolerance: "10 %",
      help: "Stress amplitude that the thread stands for ever, its notch included.",
      assumed: {
        value: "60 MPa ± 15",
        because:
          "rolled threads of 8 to 14 mm stand about 45 to 75 MPa, whatever their class (from memory, form of VDI 2230)",
      },
    }),
  };
}
