import * as z from "zod/mini";

const one = z.union([z.string(), z.number()]);
/** One reading, or the same one taken several times. */
const repeated = z.union([one, z.array(one).check(z.minLength(1), z.maxLength(50))]);
/** Readings by direction: along the crankshaft, across it. */
const directions = z.record(z.string().check(z.maxLength(40)), repeated);
/** Readings by height: top, middle, bottom. */
const heights = z.record(z.string().check(z.maxLength(40)), z.union([repeated, directions]));

/** Readings of one dimension by the number of its cylinder, crankpin or main bearing. */
export const readingSchema = z.record(z.string().check(z.regex(/^[1-9]\d?$/)), z.union([repeated, heights]));
export type Readings = z.infer<typeof readingSchema>;
export type PositionReadings = Readings[string];

/** Readings of one place as a list. */
export function asList(readings: z.infer<typeof repeated>): readonly string[] {
  return (Array.isArray(readings) ? readings : [readings]).map(String);
}

/** Whether readings are told apart by height or direction. */
export function isGroup<T>(readings: T): readings is Exclude<T, string | number | readonly unknown[]> {
  return typeof readings === "object" && readings !== null && !Array.isArray(readings);
}
