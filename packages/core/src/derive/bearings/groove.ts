import type { Bearing } from "./Bearing.ts";

export type Words = Readonly<Record<string, string>>;

/** The word that tells how far the oil groove goes round; rod bearings have none. */
export const grooveChoice = ({ part }: Bearing): Words =>
  part === "mainBearing" ? { groove: "mainBearing.groove" } : {};
export const grooveExample = ({ part }: Bearing): Words =>
  part === "mainBearing" ? { groove: "upper" } : {};

/** Bearings side by side that carry the load: two, half as long, beside a groove all round. */
export const landsOf = ({ groove }: Words): 1 | 2 => (groove === "full" ? 2 : 1);
