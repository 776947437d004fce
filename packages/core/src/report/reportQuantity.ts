import type { Derivation } from "../derive/Derivation.ts";
import { quantities } from "../derive/generated/quantities.ts";
import type { ReportQuantity } from "./Report.ts";

/** A derivation as the report carries it. */
export function reportQuantity(derivation: Derivation): ReportQuantity {
  const { id, name, symbol, unit, decimals, formula, method } = quantities.get(derivation.id)!;
  const head = { id, name, symbol, unit, decimals, formula: formula ?? method ?? "" };
  switch (derivation.state) {
    case "value": {
      const { state, nominal, low, high, inputs, assumed, takenFor } = derivation;
      const spread = derivation.spread.map(({ path, share }) => ({ path, share }));
      return { ...head, state, nominal, low, high, inputs, spread, assumed, takenFor };
    }
    case "missing":
      return { ...head, state: "missing", missing: derivation.missing };
    case "impossible":
      return { ...head, state: "impossible", reason: derivation.reason };
  }
}
