/** The commands of a block of shell: comments at their end left out, a line that ends in \ carried on. */
export function commandsOf(text: string): readonly string[] {
  return text
    .replaceAll("\\\n", " ")
    .split("\n")
    .map((line) => line.replace(/\s+#.*$/, "").trim())
    .filter((line) => line !== "" && !line.startsWith("#"));
}
