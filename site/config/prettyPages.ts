import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { AstroIntegration } from "astro";
import { prettyMarkup } from "../src/data/prettyUnits.ts";
import { builtPages } from "./builtPages.ts";

/** Prints units on every page as people do, once all pages are built: what is code, computed or typed stays as it is. */
export function prettyPages(): AstroIntegration {
  return {
    name: "pretty-pages",
    hooks: {
      "astro:build:done": async ({ dir, logger }) => {
        const { folder, names } = await builtPages(dir);
        let changed = 0;
        for (const name of names) {
          const html = await readFile(join(folder, name), "utf8");
          const pretty = prettyMarkup(html);
          if (pretty === html) continue;
          await writeFile(join(folder, name), pretty);
          changed += 1;
        }
        logger.info(`units printed as people do on ${changed} of ${names.length} pages`);
      },
    },
  };
}
