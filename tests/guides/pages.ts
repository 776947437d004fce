import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = new URL("../../", import.meta.url);
const GUIDES = "site/src/content/docs/guides";

/** Path of a page in the clone, for messages and for writing. */
export const pagePath = (name: string): string => fileURLToPath(new URL(name, root));

/** Every page whose blocks are tried: the guides, whichever there are, and what a reader of the clone opens first. */
export const pageNames: readonly string[] = [
  "README.md",
  "CONTRIBUTING.md",
  ...readdirSync(new URL(GUIDES, root))
    .filter((name) => /\.mdx?$/.test(name))
    .map((name) => `${GUIDES}/${name}`),
];

export const readPage = (name: string): string => readFileSync(pagePath(name), "utf8");
