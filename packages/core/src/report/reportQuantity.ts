import type { Derivation, DerivedValue } from "../derive/Derivation.ts";
import { quantities } from "../derive/generated/quantities.ts";
import type { Sampled } from "../derive/statistics/summarise.ts";
import type { ReportQuantity } from "./Report.ts";

function spreadBy({ spread, rootSumSquare }: DerivedValue): NonNullable<ReportQuantity["spreadBy"]> {
  const squares = new Map(rootSumSquare?.spread.map(({ path, share }) => [path, share]));
  return spread.map(({ path, share }) =>
    rootSumSquare === undefined ? { path, share } : { path, share, varianceShare: squares.get(path) ?? 0 },
  );
}

/** The root-sum-square band without the shares, which stand with those of the worst case. */
function likelyOf({ rootSumSquare }: DerivedValue): Pick<ReportQuantity, "rootSumSquare"> {
  if (rootSumSquare === undefined) return {};
  const { low, centre, high, doubts } = rootSumSquare;
  return { rootSumSquare: { low, centre, high, doubts } };
}

/**
 * A derivation as the report carries it.
 * @param sampled how it scatters over drawn engines, where engines were drawn
 */
export function reportQuantity(derivation: Derivation, sampled: Sampled | undefined): ReportQuantity {
  const { id, name, symbol, unit, decimals, formula, method } = quantities.get(derivation.id)!;
  const head = { id, name, symbol, unit, decimals, formula: formula ?? method ?? "" };
  switch (derivation.state) {
    case "value": {
      const { state, nominal, low, high, inputs, assumed, takenFor } = derivation;
      return {
        ...head,
        state,
        nominal,
        low,
        high,
        ...likelyOf(derivation),
        ...(sampled === undefined ? {} : { sampled }),
        inputs,
        spreadBy: spreadBy(derivation),
        assumed,
        takenFor,
      };
    }
    case "missing":
      return { ...head, state: "missing", missing: derivation.missing };
    case "impossible":
      return { ...head, state: "impossible", reason: derivation.reason };
  }
}
