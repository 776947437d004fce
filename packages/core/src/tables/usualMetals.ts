import { type MaterialId, materials } from "./materials.ts";

/** Usual properties of a material in SI units, for parts whose metal is not entered. */
export interface UsualMaterial {
  /** Mean linear expansion from 20 °C [1/K]. */
  readonly expansion: number;
  /** The same as a formula writes it, `12e-6`. */
  readonly expansionText: string;
  /** Young's modulus at 20 °C [Pa]. */
  readonly elasticModulus: number;
  /** The same as a formula writes it, `206e9`. */
  readonly modulusText: string;
  /** [-] */
  readonly poissonRatio: number;
}

function usualMaterial(id: MaterialId): UsualMaterial {
  const { expansion, modulus, poisson } = materials[id];
  return {
    // A division, not a product: it gives the number that the text stands for to the last bit.
    expansion: expansion.usual / 1e6,
    expansionText: `${expansion.usual}e-6`,
    elasticModulus: modulus.usual * 1e9,
    modulusText: `${modulus.usual}e9`,
    poissonRatio: poisson.usual,
  };
}

/** Steel of pins, pushrods, hubs, shells and lobes. Source: the table of materials, from memory. */
export const STEEL = usualMaterial("steel");
/** Cast iron, of which cylinders and their liners are made. Source: the table of materials, from memory. */
export const IRON = usualMaterial("grey-iron");
