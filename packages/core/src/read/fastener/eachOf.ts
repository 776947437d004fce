import type { AssumedValue } from "../FieldSpec.ts";

type Table<T> = Readonly<Record<string, T>>;

/** The words of a choice from a table, each with its text. */
export const wordsOf = <T>(table: Table<T>, text: (one: T) => string) =>
  Object.fromEntries(Object.entries(table).map(([name, one]) => [name, text(one)]));

/** The defaults of a field by the word of a choice, from a table. */
export const valuesOf = <T>(
  table: Table<T>,
  value: (one: T) => string,
  because: (one: T, name: string) => string,
) =>
  Object.fromEntries(
    Object.entries(table).map(([name, one]): [string, AssumedValue] => [
      name,
      { value: value(one), because: because(one, name) },
    ]),
  );
