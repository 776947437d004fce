import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder of the built site. */
export const dist = fileURLToPath(new URL("../../site/dist", import.meta.url));

/** Address of every page of the built site (`/rules/`), in order of their names. */
export const sitePages: readonly string[] = readdirSync(dist, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".html"))
  .map((name) => `/${name.replaceAll("\\", "/").replace(/index\.html$/, "")}`)
  .sort();

/** The HTML of one of them. */
export const pageText = (path: string): string =>
  readFileSync(join(dist, path.endsWith("/") ? `${path}index.html` : path), "utf8");

/** Whether the built site has a file at this address. */
export const hasFile = (path: string): boolean => existsSync(join(dist, path));
