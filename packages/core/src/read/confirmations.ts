import * as z from "zod/mini";
import type { FieldValue } from "./FieldValue.ts";

/** What a person saw of something that no number tells. */
export interface Confirmation {
  /** Whether what the rule asks for was so. */
  readonly seen: "yes" | "no";
  readonly by: string;
  /** The day, `2026-03-14`. */
  readonly on: string;
  /** With what, and what was read. */
  readonly how: string;
}

const expected = {
  seen: "yes or no: whether it was as the rule says",
  by: "who looked: a name or initials, at most 100 characters",
  on: "the day as year-month-day, such as 2026-03-14",
  how: "with what it was looked at and what was read, at most 1000 characters",
} as const satisfies Record<keyof Confirmation, string>;

/** Words that may stand in a confirmation. */
export const confirmationKeys: readonly string[] = Object.keys(expected);

/** What belongs under one of the words of a confirmation. */
export function expectedConfirmation(key: string): string {
  return (
    expected[key as keyof Confirmation] ??
    'an entry such as { seen: yes, by: J. B., on: 2026-03-14, how: "…" }'
  );
}

/** Confirmations of a build file by the id of the rule that asks for them. */
export const confirmationsSchema = z
  .record(
    z.string().check(z.regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/)),
    z
      .strictObject({
        seen: z.enum(["yes", "no"]),
        by: z.string().check(z.trim(), z.minLength(1), z.maxLength(100)),
        on: z.iso.date(),
        how: z.string().check(z.trim(), z.minLength(3), z.maxLength(1000)),
      })
      .check(z.describe("Whether it was seen, by whom, on which day and how.")),
  )
  .check(z.describe("What a person confirmed, by the id of the rule that asks for it."));

/** How a confirmation is written in a build file, to be filled in. */
export function confirmationEntry(rule: string): string {
  return `confirmations:\n  ${rule}: { seen: yes, by: …, on: year-month-day, how: … }`;
}

const PREFIX = "confirmations.";

/** The name under which rules and values know the confirmation of a rule. */
export const confirmationPath = (rule: string): string => `${PREFIX}${rule}`;

export const isConfirmationPath = (path: string): boolean => path.startsWith(PREFIX);

/** A confirmation as the fact that a rule asks for. */
export function confirmationValue({ seen }: Pick<Confirmation, "seen">): FieldValue {
  return { kind: "choice", value: seen, provenance: "measured" };
}
