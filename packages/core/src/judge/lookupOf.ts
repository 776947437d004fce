import type { Derivation } from "../derive/Derivation.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { Lookup } from "./decide.ts";
import type { Fact } from "./Fact.ts";

/** The fact that a field is; a missing one where the build has none of that path. */
export function factOfField(path: string, value: FieldValue | undefined): Fact {
  switch (value?.kind) {
    case "dimension":
      return { kind: "band", low: value.low, nominal: value.nominal, high: value.high, missing: [] };
    case "choice":
      return { kind: "word", word: value.value };
    default:
      return { kind: "missing", missing: [path.replace(/\.place$/, "")] };
  }
}

/** The fact that a derived quantity is. */
export function factOfDerivation(derivation: Derivation): Fact {
  switch (derivation.state) {
    case "value":
      return {
        kind: "band",
        low: derivation.low,
        nominal: derivation.nominal,
        high: derivation.high,
        missing: [],
      };
    case "missing":
      return { kind: "missing", missing: derivation.missing.map((path) => path.replace(/\.place$/, "")) };
    case "impossible":
      return { kind: "missing", missing: [], reason: derivation.reason };
  }
}

/** Facts for the rules from fields and derived quantities; whatever is not there is a missing fact. */
export function lookupOf(
  values: ReadonlyMap<string, FieldValue>,
  derivations: ReadonlyMap<string, Derivation>,
): Lookup {
  return (name) => {
    const derivation = derivations.get(name);
    return derivation === undefined ? factOfField(name, values.get(name)) : factOfDerivation(derivation);
  };
}
