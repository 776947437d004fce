import { quantities } from "../derive/generated/quantities.ts";
import { isConfirmationPath } from "../read/confirmations.ts";
import { fields } from "../read/fieldCatalog.ts";

/** What a rule may ask of a fact. */
export type FactType =
  | {
      readonly kind: "number";
      readonly unit: string;
      readonly label: string;
      readonly decimals?: number;
      readonly nominalOnly?: boolean;
    }
  | { readonly kind: "word"; readonly options: readonly string[]; readonly label: string };

/** The fact by which a rule asks for what a person saw; each rule has its own. */
export const CONFIRMED = "confirmed";

/** The type of a field or quantity by its name in rules, or undefined when there is none. */
export function factType(name: string): FactType | undefined {
  const quantity = quantities.get(name);
  if (quantity !== undefined)
    return {
      kind: "number",
      unit: quantity.unit,
      label: quantity.name,
      decimals: quantity.decimals,
      nominalOnly: quantity.nominalOnly,
    };
  if (name.endsWith(".place")) {
    const spec = fields.get(name.slice(0, -".place".length))?.spec;
    return spec?.kind === "dimension" && spec.places !== undefined
      ? { kind: "word", options: spec.places, label: `where ${spec.label.toLowerCase()} is meant` }
      : undefined;
  }
  if (name === CONFIRMED || isConfirmationPath(name))
    return { kind: "word", options: ["yes", "no"], label: "Confirmed by a person" };
  const spec = fields.get(name)?.spec;
  switch (spec?.kind) {
    case "dimension":
      return { kind: "number", unit: spec.unit, label: spec.label };
    case "count":
      return { kind: "number", unit: "1", label: spec.label };
    case "choice":
      return { kind: "word", options: Object.keys(spec.options), label: spec.label };
    default:
      return undefined;
  }
}

/** Every name that a rule may use. */
export function factNames(): readonly string[] {
  const names = [...quantities.keys()];
  for (const [path, { spec }] of fields) {
    if (factType(path) !== undefined) names.push(path);
    if (spec.kind === "dimension" && spec.places !== undefined) names.push(`${path}.place`);
  }
  return names;
}
