import { type TappedMetal, threadShear } from "../../tables/threadShear.ts";
import { dimension } from "../fields.ts";

/**
 * Shear strength of a part into which fasteners are screwed, which its material gives where it is not entered.
 * @param choice path of the field that names the material
 * @param symbol of the strength
 * @param metal whose metal, for the help
 * @param words word of the choice → metal of the table
 */
export function threadShearField(
  choice: string,
  symbol: string,
  metal: string,
  words: Readonly<Record<string, TappedMetal>>,
) {
  return dimension({
    label: "Shear strength of the threads",
    symbol,
    unit: "MPa",
    range: ["50 MPa", "1200 MPa"],
    tolerance: "10 %",
    help: `Shear strength of ${metal}.`,
    assumed: {
      byChoice: choice,
      values: Object.fromEntries(Object.entries(words).map(([word, id]) => [word, threadShear[id]])),
    },
  });
}
