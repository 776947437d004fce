import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

/**
 * What a page may do: load from its own host, run its own files and the inline scripts named by their hash, compile
 * the WebAssembly of the search. Style attributes are allowed, since highlighted code carries its colours in them.
 */
const directives = {
  "default-src": ["'self'"],
  "script-src": ["'self'", "'wasm-unsafe-eval'"],
  "style-src": ["'self'", "'unsafe-inline'"],
  "img-src": ["'self'", "data:"],
  "connect-src": ["'self'"],
  "worker-src": ["'self'"],
  "object-src": ["'none'"],
  "base-uri": ["'none'"],
  "form-action": ["'self'"],
} as const;

/** Scripts without a file of their own. Their text ends at the first closing tag, whatever stands in it. */
const INLINE_SCRIPT = /<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g;

/**
 * A page with the policy as the first thing in its head, so that it holds for everything after it.
 * @throws Error for a page without a head: a policy that is not written holds for nothing.
 */
export function withPolicy(html: string): string {
  const hashes = [...html.matchAll(INLINE_SCRIPT)].map(
    ([, script]) => `'sha256-${createHash("sha256").update(script!).digest("base64")}'`,
  );
  const policy = Object.entries({
    ...directives,
    "script-src": [...directives["script-src"], ...new Set(hashes)],
  })
    .map(([name, values]) => `${name} ${values.join(" ")}`)
    .join("; ");
  const start = /<head(?:\s[^>]*)?>(?:\s*<meta charset="utf-8"\s*\/?>)?/i.exec(html);
  if (start === null) throw new Error("a page without a head cannot carry a policy");
  const end = start.index + start[0].length;
  return `${html.slice(0, end)}<meta http-equiv="content-security-policy" content="${policy}">${html.slice(end)}`;
}

/** Writes the policy into every page, once all of them are built. */
export function securityPolicy(): AstroIntegration {
  return {
    name: "security-policy",
    hooks: {
      "astro:build:done": async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const names = await readdir(folder, { recursive: true });
        const pages = names.filter((name) => name.endsWith(".html")).map((name) => join(folder, name));
        for (const page of pages) await writeFile(page, withPolicy(await readFile(page, "utf8")));
        logger.info(`policy written into ${pages.length} pages`);
      },
    },
  };
}
