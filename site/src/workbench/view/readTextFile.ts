/** More than any build file or measurement sheet has [bytes]. */
const MOST = 4 * 1024 * 1024;

/**
 * What a file of this machine says.
 * @returns why it cannot be taken, where it is no text or too long for a build or a sheet
 */
export async function readTextFile(
  file: File,
): Promise<{ readonly text: string } | { readonly refused: string }> {
  if (file.size > MOST)
    return {
      refused: `${file.name} has ${Math.round(file.size / 1024 / 1024)} MB; expected a build file or a measurement sheet`,
    };
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer());
    if (!text.includes("\u0000")) return { text };
  } catch {
    // Told below as what is no text.
  }
  return {
    refused: `${file.name} is no text; expected a build file (YAML or JSON) or a measurement sheet (CSV)`,
  };
}
