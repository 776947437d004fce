import { createHash } from "node:crypto";
import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import { build } from "esbuild";

/** What the workbench is made of, below the folder of the built site. */
const PARTS = [
  "workbench/**/*.{html,json}",
  "offline/index.html",
  "_astro/**/*.{js,css,json}",
  "favicon.svg",
];

/** After the site is built: a service worker that keeps the workbench for use without a network. */
export function offline(base = "/"): AstroIntegration {
  const root = base.endsWith("/") ? base : `${base}/`;
  return {
    name: "offline",
    hooks: {
      "astro:build:done": async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const files = globSync(PARTS, { cwd: folder }).sort();
        const entries = files.map((file) => ({
          url: root + file.replaceAll("\\", "/").replace(/index\.html$/, ""),
          revision: createHash("sha256")
            .update(readFileSync(folder + file))
            .digest("hex")
            .slice(0, 16),
        }));
        await build({
          entryPoints: [fileURLToPath(new URL("../src/offline/serviceWorker.ts", import.meta.url))],
          bundle: true,
          minify: true,
          format: "iife",
          define: {
            OFFLINE_FILES: JSON.stringify(entries),
            OFFLINE_PAGE: JSON.stringify(`${root}offline/`),
            "process.env.NODE_ENV": '"production"',
          },
          outfile: `${folder}offline.js`,
          logLevel: "error",
        });
        logger.info(`${entries.length} files kept for use without a network`);
      },
    },
  };
}
