import type { Quantity } from "./Quantity.ts";

/**
 * Says which values do not go together, in the words and units of the build.
 * @param detail what the mechanics refused, in SI units
 * @param shown a direct input as text, or undefined when it has none
 */
export function describeContradiction(
  quantity: Quantity,
  detail: string,
  shown: (path: string) => string | undefined,
): string {
  const inputs = Object.values(quantity.inputs).flatMap((path) => shown(path) ?? []);
  return `${quantity.name} cannot be worked out, since these values do not go together: ${inputs.join("; ")} (in SI units: ${detail})`;
}
