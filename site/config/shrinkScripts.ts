import { globSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import { type MinifyOptions, minify } from "terser";

const OPTIONS: MinifyOptions = {
  module: true,
  ecma: 2020,
  compress: { passes: 3 },
  format: { comments: false },
};

/**
 * After the site is built: goes over its finished scripts once more. Within the build it would fold back into scripts
 * what was put apart from them as data.
 */
export function shrinkScripts(): AstroIntegration {
  return {
    name: "shrink-scripts",
    hooks: {
      "astro:build:done": async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const files = globSync("_astro/**/*.js", { cwd: folder }).sort();
        let saved = 0;
        for (const file of files) {
          const before = readFileSync(folder + file, "utf8");
          const { code } = await minify(before, OPTIONS);
          if (code === undefined || code.length >= before.length) continue;
          saved += before.length - code.length;
          writeFileSync(folder + file, code);
        }
        logger.info(`${files.length} scripts, ${(saved / 1000).toFixed(1)} kB shorter`);
      },
    },
  };
}
