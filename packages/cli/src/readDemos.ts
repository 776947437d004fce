import { readdir, readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

/** The invented builds that are shipped, in the order of their names. */
export async function readDemos(): Promise<readonly { readonly name: string; readonly text: string }[]> {
  const folder = new URL("demo/", import.meta.resolve("trialfit/package.json"));
  const names = (await readdir(fileURLToPath(folder))).filter((name) => name.endsWith(".yaml")).sort();
  return Promise.all(
    names.map(async (name) => ({
      name: name.replace(/\.yaml$/, ""),
      text: await readFile(new URL(name, folder), "utf8"),
    })),
  );
}
