const PLACEHOLDER = /\{([A-Za-z][A-Za-z0-9.]*)\}/g;

/** Names in braces in a text of a rule: quantities, fields and limits whose values are printed there. */
export function templateNames(text: string): readonly string[] {
  return [...text.matchAll(PLACEHOLDER)].map((match) => match[1]!);
}

/** Fills the braces of a text. */
export function fillTemplate(text: string, print: (name: string) => string): string {
  return text.replace(PLACEHOLDER, (_, name: string) => print(name));
}
