/** In which units numbers are printed: as the build writes them, or all metric, inch, or both side by side. */
export const unitChoices = ["written", "metric", "inch", "both"] as const;
export type UnitChoice = (typeof unitChoices)[number];

type Pair = readonly [metric: string, inch: string];

/** Units that people use for the same thing in both systems. What is not listed is written alike in both. */
const pairs: readonly Pair[] = [
  ["mm", "in"],
  ["um", "thou"],
  ["mm2", "in2"],
  ["cm2", "in2"],
  ["cm3", "in3"],
  ["L", "in3"],
  ["mm4", "in4"],
  ["kg", "lb"],
  ["g", "oz"],
  ["N", "lbf"],
  ["kN", "lbf"],
  ["N m", "lbf ft"],
  ["kPa", "psi"],
  ["bar", "psi"],
  ["MPa", "ksi"],
  ["kW", "hp"],
  ["degC", "degF"],
];

/** The unit in the wanted system for a unit of either; itself where both systems use it. */
export function unitIn(system: "metric" | "inch", unit: string): string {
  const [from, to] = system === "metric" ? [1, 0] : [0, 1];
  return pairs.find((pair) => pair[from] === unit)?.[to] ?? unit;
}

/** The units in which a number that is written in `unit` is printed, in order. */
export function unitsFor(choice: UnitChoice, unit: string): readonly string[] {
  if (choice === "written") return [unit];
  if (choice !== "both") return [unitIn(choice, unit)];
  return [...new Set([unitIn("metric", unit), unitIn("inch", unit)])];
}
