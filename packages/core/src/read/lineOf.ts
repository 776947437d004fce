/** Line and column, both from 1, of a place in a text. */
export function lineOf(text: string, index: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, index).split("\n");
  return { line: before.length, column: before.at(-1)!.length + 1 };
}
