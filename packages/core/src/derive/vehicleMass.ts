import { quantity } from "./Quantity.ts";

interface VehicleMass {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** The inertia: its symbol and the quantity that gives it. */
  readonly inertia: readonly [symbol: string, id: string];
  /** Of the example: an inertia and what it comes to. */
  readonly example: readonly [inertia: string, expect: string];
}

/** Declares the mass of the vehicle that an inertia of the engine is worth in the gear looked at. */
export function vehicleMass({ inertia: [J, id], example: [given, expect], ...own }: VehicleMass) {
  return quantity({
    ...own,
    unit: "kg",
    decimals: 1,
    system: "crankshaft",
    inputs: { [J]: id, i_t: "driveline.totalRatio", R_w: "driveline.tyreRadius" } as Readonly<
      Record<string, string>
    >,
    formula: `${J} * (i_t / R_w)^2`,
    compute: (n) => n[J]! * (n.i_t! / n.R_w!) ** 2,
    shape: "monotone",
    valid: "tyres that do not slip",
    sources: [{ id: "definition" }],
    examples: [{ given: { [J]: given, i_t: "10", R_w: "300 mm" }, expect }],
    display: true,
  });
}
