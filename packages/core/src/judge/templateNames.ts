const PLACEHOLDER = /\{([A-Za-z][A-Za-z0-9.]*?)(?:\.(low|high))?\}/g;

/** Which value of a band a text wants: both ends with the nominal, or one end alone. */
export type BandEnd = "low" | "high" | undefined;

/** Names in braces in a text of a rule: quantities, fields and limits whose values are printed there. */
export function templateNames(text: string): readonly string[] {
  return [...text.matchAll(PLACEHOLDER)].map((match) => match[1]!);
}

/** Braces of a text that hold no name, or are not a pair: nothing is printed for them, and the reader sees them. */
export function strayBraces(text: string): readonly string[] {
  const rest = text.replace(PLACEHOLDER, (match) => " ".repeat(match.length));
  return [...rest.matchAll(/\{[^{}]*\}|\{[^{}\s]*|\}/g)].map(([piece]) => piece);
}

/**
 * Fills the braces of a text; `{name.high}` takes the upper end of a band, which covers the tolerances.
 * A sentence whose number is missing is left out: half a sentence helps nobody.
 */
export function fillTemplate(
  text: string,
  print: (name: string, end: BandEnd) => string | undefined,
): string {
  const sentences = text.split(/(?<=[.!?]) +(?=[A-Z{])/).flatMap((sentence) => {
    let whole = true;
    const filled = sentence.replace(PLACEHOLDER, (_, name: string, end: BandEnd) => {
      const value = print(name, end);
      if (value === undefined) whole = false;
      return value ?? "…";
    });
    return whole ? [filled] : [];
  });
  return sentences.join(" ");
}

/** A stretch of plain text, or a name whose value is printed there. */
export type TemplatePiece = { readonly text: string } | { readonly name: string; readonly end: BandEnd };

/** A text in pieces, for pages that show what is printed where. */
export function templatePieces(text: string): readonly TemplatePiece[] {
  const pieces: TemplatePiece[] = [];
  let after = 0;
  for (const match of text.matchAll(PLACEHOLDER)) {
    if (match.index > after) pieces.push({ text: text.slice(after, match.index) });
    pieces.push({ name: match[1]!, end: match[2] as BandEnd });
    after = match.index + match[0].length;
  }
  return after < text.length ? [...pieces, { text: text.slice(after) }] : pieces;
}
