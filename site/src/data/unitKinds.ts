import { type Unit, unitsLike, unitTable } from "trialfit";

/** What the units of one kind measure, by the first of them in the table. */
const names: Readonly<Record<string, string>> = {
  m: "Length",
  m2: "Area",
  m3: "Volume",
  m4: "Second moment of area",
  kg: "Mass",
  N: "Force",
  "N m": "Torque and energy",
  "N m/rad": "Torsional stiffness",
  "m/rad": "Velocity of lift, by angle",
  "m/rad2": "Acceleration of lift, by angle",
  "mm/kN": "Compliance",
  Hz: "Frequency",
  "W/m3": "Power by volume",
  "J/(kg K)": "Specific heat",
  "W/K": "Heat conductance",
  "W/(m2 K)": "Heat transfer coefficient",
  Pa: "Pressure, stress and hardness",
  W: "Power",
  "m/s": "Speed",
  "m/s2": "Acceleration",
  "m2/s2": "Energy by mass",
  "rad/s": "Speed of rotation",
  rad: "Angle",
  s: "Time",
  K: "Temperature",
  "1/K": "Thermal expansion",
  "N/mm": "Spring rate and line load",
  "kg/s": "Mass flow",
  "m3/s": "Volume flow",
  "kg/J": "Specific consumption",
  "mm2/kW": "Area by power",
  "kg/m3": "Density",
  "Pa s": "Viscosity",
  "kg m2": "Moment of inertia",
  "g mm": "Unbalance",
  "1": "Plain numbers and shares",
};

/** Units that measure the same. */
export interface UnitKind {
  readonly name: string;
  /** The first of them, which stands for the kind. */
  readonly first: Unit;
  /** The one that is SI: one of it is 1. */
  readonly si: Unit;
  readonly units: readonly Unit[];
}

function isSi({ factor, offset, pi }: Unit): boolean {
  return factor.numerator === factor.denominator && offset.numerator === 0n && pi === 0;
}

function kindOf(first: Unit): UnitKind {
  const name = names[first.symbol];
  const units = unitsLike(first);
  const si = units.find(isSi);
  if (name === undefined || si === undefined)
    throw new Error(`no name or SI unit for the kind of ${first.symbol}`);
  return { name, first, si, units };
}

/** Every kind of unit, in the order of the table. @throws Error when a kind has no name here. */
export const unitKinds: readonly UnitKind[] = [...new Set(unitTable.map((unit) => unitsLike(unit)[0]!))].map(
  kindOf,
);
