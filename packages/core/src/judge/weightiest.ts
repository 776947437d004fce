import type { Judged } from "./Judged.ts";

/** A dimension, and the greatest share that it has in the width of what is compared. */
export interface Weight {
  readonly path: string;
  readonly share: number;
}

/** Dimensions that spread what is compared and unsettled, the weightiest first. */
export function weightiest({ verdict, derivations, values }: Judged): readonly Weight[] {
  const shares = new Map<string, number>();
  for (const { fact, againstName, state } of verdict.comparisons) {
    if (state !== "possible") continue;
    for (const name of [fact, againstName]) {
      if (name === undefined) continue;
      const derivation = derivations.get(name);
      const spread = derivation?.state === "value" ? derivation.spread : [{ path: name, share: 1 }];
      for (const { path, share } of spread)
        if (values.get(path)?.kind === "dimension") shares.set(path, Math.max(share, shares.get(path) ?? 0));
    }
  }
  return [...shares]
    .map(([path, share]) => ({ path, share }))
    .sort((a, b) => b.share - a.share || (a.path < b.path ? -1 : 1));
}
