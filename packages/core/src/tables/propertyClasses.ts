/** Least strengths of a class or grade of fastener [MPa]. */
export interface PropertyClass {
  readonly name: string;
  readonly proof: number;
  readonly yield: number;
  readonly tensile: number;
}

/** Thousand pounds on a square inch [MPa]. */
const KPSI = 6.894757;
const grade = (name: string, proof: number, yieldStrength: number, tensile: number): PropertyClass => ({
  name,
  proof: proof * KPSI,
  yield: yieldStrength * KPSI,
  tensile: tensile * KPSI,
});

/**
 * Classes of fasteners. Source: ISO 898-1 for 8.8 (up to 16 mm), 10.9 and 12.9; SAE J429 for grades 5 (1/4 to
 * 1 in) and 8, as printed in Shigley's Mechanical Engineering Design; 9.8 from memory. Fasteners of competition engines are mostly
 * stronger than any class: enter their maker's figures.
 */
export const propertyClasses: Readonly<Record<string, PropertyClass>> = {
  "8.8": { name: "ISO 898-1 class 8.8, up to 16 mm", proof: 580, yield: 640, tensile: 800 },
  "9.8": { name: "ISO 898-1 class 9.8, up to 16 mm (from memory)", proof: 650, yield: 720, tensile: 900 },
  "10.9": { name: "ISO 898-1 class 10.9", proof: 830, yield: 940, tensile: 1040 },
  "12.9": { name: "ISO 898-1 class 12.9", proof: 970, yield: 1100, tensile: 1220 },
  "grade-5": grade("SAE J429 grade 5, 1/4 to 1 in", 85, 92, 120),
  "grade-8": grade("SAE J429 grade 8", 120, 130, 150),
};
