import * as z from "zod/mini";
import { parseDimension } from "../units/parseDimension.ts";
import type { Taken } from "./FieldValue.ts";

const name = z.string().check(z.trim(), z.minLength(1), z.maxLength(200));

/** What may be said of how a reading was taken, and of the readings before it. */
export const takenShape = {
  by: z.optional(name),
  on: z.optional(z.iso.date()),
  temperature: z.optional(z.string().check(z.maxLength(40))),
  joint: z.optional(name),
  replaces: z.optional(
    z
      .array(
        z.strictObject({
          was: z.string().check(z.minLength(1), z.maxLength(4000)),
          because: z.string().check(z.trim(), z.minLength(3), z.maxLength(1000)),
          by: z.optional(name),
          on: z.optional(z.iso.date()),
        }),
      )
      .check(z.minLength(1), z.maxLength(100)),
  ),
} as const;

/** The circumstances of a reading as they are written: with `undefined` where one is left out. */
export type WrittenTaken = z.infer<z.ZodMiniObject<typeof takenShape>>;

/**
 * The circumstances of a reading, or undefined where none is told.
 * @throws DimensionError when the temperature is none
 */
export function readTaken({ by, on, temperature, joint, replaces }: WrittenTaken): Taken | undefined {
  if (temperature !== undefined) parseDimension(temperature, { unit: "degC" });
  const told = defined({ by, on, temperature, joint, replaces: replaces?.map(defined) });
  return Object.keys(told).length === 0 ? undefined : (told as Taken);
}

/** Without what was left out. */
const defined = (all: object): object =>
  Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
