/** `trial-assembly` as people write it: `trial assembly`. */
export function spaced(id: string): string {
  return id.replaceAll("-", " ");
}

/** With its first letter large, as a sentence begins. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
