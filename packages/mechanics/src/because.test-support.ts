/** One reason for each of some names, written with spaces between them. */
export const because = (reason: string, names: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    names
      .trim()
      .split(/\s+/)
      .map((name) => [name, reason]),
  );
