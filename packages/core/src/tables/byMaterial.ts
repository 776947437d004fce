import type { AssumedValue, FieldDefault } from "../read/FieldSpec.ts";
import { type Material, type MaterialId, materials } from "./materials.ts";

/** Unit in which the table gives a property, as the build file writes it. */
const units: Readonly<Record<keyof Omit<Material, "name">, string>> = {
  expansion: "e-6 1/K",
  modulus: " GPa",
  poisson: "",
  density: " kg/m3",
};

function assumedFrom(id: MaterialId, property: keyof typeof units): AssumedValue {
  const { name, [property]: known } = materials[id];
  const unit = units[property];
  const spread = property === "expansion" ? `${known.spread}e-6` : known.spread;
  return {
    value: `${known.usual}${unit} ± ${spread}`,
    because: `usual for ${name} (from memory, table of materials)`,
  };
}

/**
 * The default of a field that follows the material of its part.
 * @param byChoice path of the choice that names the material
 * @param words word of the choice → material of the table
 */
export function byMaterial(
  byChoice: string,
  property: keyof typeof units,
  words: Readonly<Record<string, MaterialId>>,
): FieldDefault {
  return {
    byChoice,
    values: Object.fromEntries(
      Object.entries(words).map(([word, id]) => [word, assumedFrom(id, property)] as const),
    ),
  };
}
