/** One property of a material: the usual value, and how far alloys of the same name lie from it. */
export interface MaterialProperty {
  readonly usual: number;
  readonly spread: number;
}

/** What a material is like between 20 °C and 200 °C. */
export interface Material {
  readonly name: string;
  /** Mean linear expansion [1e-6/K]. */
  readonly expansion: MaterialProperty;
  /** Young's modulus at 20 °C [GPa]. */
  readonly modulus: MaterialProperty;
  /** Poisson's ratio. */
  readonly poisson: MaterialProperty;
  /** Density [kg/m3]. */
  readonly density: MaterialProperty;
}

const of = (usual: number, spread: number): MaterialProperty => ({ usual, spread });

/**
 * Materials of engine parts. Values are typical ones of handbooks, recalled and not checked line by line against
 * one: standing "from memory". A part maker's sheet outranks them; every field that they fill can be entered.
 */
export const materials = {
  "grey-iron": {
    name: "grey cast iron",
    expansion: of(11.0, 0.6),
    modulus: of(110, 20),
    poisson: of(0.26, 0.02),
    density: of(7200, 100),
  },
  "compacted-iron": {
    name: "compacted graphite iron",
    expansion: of(11.5, 0.6),
    modulus: of(145, 10),
    poisson: of(0.26, 0.02),
    density: of(7150, 100),
  },
  "ductile-iron": {
    name: "ductile (nodular) iron",
    expansion: of(12.0, 0.7),
    modulus: of(169, 8),
    poisson: of(0.28, 0.02),
    density: of(7150, 100),
  },
  "cast-aluminium": {
    name: "cast aluminium-silicon alloy",
    expansion: of(21.5, 1.0),
    modulus: of(73, 3),
    poisson: of(0.33, 0.01),
    density: of(2700, 50),
  },
  "wrought-aluminium": {
    name: "wrought aluminium alloy",
    expansion: of(23.3, 0.7),
    modulus: of(70, 2),
    poisson: of(0.33, 0.01),
    density: of(2750, 60),
  },
  "aluminium-2618": {
    name: "aluminium alloy 2618",
    expansion: of(22.3, 0.5),
    modulus: of(73, 2),
    poisson: of(0.33, 0.01),
    density: of(2760, 20),
  },
  "aluminium-4032": {
    name: "aluminium alloy 4032",
    expansion: of(19.4, 0.6),
    modulus: of(79, 2),
    poisson: of(0.33, 0.01),
    density: of(2690, 20),
  },
  steel: {
    name: "carbon or low-alloy steel",
    expansion: of(12.0, 0.5),
    modulus: of(206, 4),
    poisson: of(0.29, 0.01),
    density: of(7840, 40),
  },
  "austenitic-steel": {
    name: "austenitic steel",
    expansion: of(16.8, 0.8),
    modulus: of(198, 6),
    poisson: of(0.3, 0.01),
    density: of(7920, 60),
  },
  titanium: {
    name: "titanium alloy (6 % Al, 4 % V)",
    expansion: of(8.9, 0.3),
    modulus: of(114, 4),
    poisson: of(0.33, 0.02),
    density: of(4430, 30),
  },
} as const satisfies Readonly<Record<string, Material>>;

export type MaterialId = keyof typeof materials;
