import { byMaterial } from "../tables/byMaterial.ts";
import type { MaterialId } from "../tables/materials.ts";
import { dimension } from "./fields.ts";

type Words = Readonly<Record<string, MaterialId>>;

/**
 * Fields of what a part's material is like, filled from the table of materials when only its name is known.
 * @param choice path of the field that names the material
 * @param suffix index of the symbols: `b` gives `alpha_b` and `E_b`
 * @param words word of the choice → material of the table
 */
export function expansionField(choice: string, suffix: string, words: Words) {
  return dimension({
    label: "Thermal expansion",
    symbol: `alpha_${suffix}`,
    unit: "um/(m K)",
    range: ["3 um/(m K)", "30 um/(m K)"],
    tolerance: "5 %",
    help: "Growth of each metre for each kelvin, as a mean from 20 °C to where the part runs; from the material's sheet.",
    assumed: byMaterial(choice, "expansion", words),
  });
}

/** Young's modulus of a part's material. See `expansionField`. */
export function modulusField(choice: string, suffix: string, words: Words) {
  return dimension({
    label: "Elastic modulus",
    symbol: `E_${suffix}`,
    unit: "GPa",
    range: ["30 GPa", "260 GPa"],
    tolerance: "5 %",
    help: "Young's modulus of the material at 20 °C, from its sheet.",
    assumed: byMaterial(choice, "modulus", words),
  });
}

/** Density of a part's material. See `expansionField`. */
export function densityField(choice: string, suffix: string, words: Words) {
  return dimension({
    label: "Density",
    symbol: `rho_${suffix}`,
    unit: "kg/m3",
    range: ["1500 kg/m3", "9000 kg/m3"],
    tolerance: "2 %",
    help: "Density of the material, from its sheet.",
    assumed: byMaterial(choice, "density", words),
  });
}
