import { readdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";

/** Every page that was built: the folder of the site, and the files of the pages in it, sorted. */
export async function builtPages(dir: URL): Promise<{ folder: string; names: readonly string[] }> {
  const folder = fileURLToPath(dir);
  const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".html"));
  return { folder, names: names.sort() };
}
