import * as z from "zod";
import { parseDimension } from "../units/parseDimension.ts";
import type { Taken } from "./FieldValue.ts";

const name = z.string().trim().min(1).max(200);

/** What may be said of how a reading was taken, and of the readings before it. */
export const takenShape = {
  by: name.optional(),
  on: z.iso.date().optional(),
  temperature: z.string().max(40).optional(),
  joint: z.string().trim().min(1).max(200).optional(),
  replaces: z
    .array(
      z.strictObject({
        was: z.string().min(1).max(4000),
        because: z.string().trim().min(3).max(1000),
        by: name.optional(),
        on: z.iso.date().optional(),
      }),
    )
    .min(1)
    .max(100)
    .optional(),
} as const;

/** The circumstances of a reading as they are written: with `undefined` where one is left out. */
export type WrittenTaken = z.infer<z.ZodObject<typeof takenShape>>;

/**
 * The circumstances of a reading, or undefined where none is told.
 * @throws DimensionError when the temperature is none
 */
export function readTaken({ by, on, temperature, joint, replaces }: WrittenTaken): Taken | undefined {
  if (temperature !== undefined) parseDimension(temperature, { unit: "degC" });
  const told = {
    ...(by === undefined ? {} : { by }),
    ...(on === undefined ? {} : { on }),
    ...(temperature === undefined ? {} : { temperature }),
    ...(joint === undefined ? {} : { joint }),
    ...(replaces === undefined
      ? {}
      : {
          replaces: replaces.map(({ was, because, by: who, on: when }) => ({
            was,
            because,
            ...(who === undefined ? {} : { by: who }),
            ...(when === undefined ? {} : { on: when }),
          })),
        }),
  };
  return Object.keys(told).length === 0 ? undefined : told;
}
