const RAISED: Readonly<Record<string, string>> = { 2: "²", 3: "³", 4: "⁴" };

/**
 * A unit as people print it, from its symbol as files have it: `°` for `deg`, `µm` for `um`, `m²/s²` for `m2/s2`. Only
 * what is shown is changed; a box and a file keep the spelling that can be typed everywhere.
 */
export const prettyUnit = (symbol: string): string =>
  symbol
    .replace(/^deg(?=[CF]?$)/, "°")
    .replace(/^um\b/, "µm")
    .replace(/(?<=[a-z])[234]/g, (digit) => RAISED[digit]!);
