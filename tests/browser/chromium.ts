import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * Path of a Chromium: the one named by CHROMIUM_PATH, or the one of the registry package, unpacked into a folder
 * of its own version (the package would otherwise take whatever lies in the system's temporary folder).
 */
export async function chromiumPath(): Promise<string> {
  const own = process.env.CHROMIUM_PATH;
  if (own !== undefined && own !== "") {
    if (!existsSync(own)) throw new Error(`CHROMIUM_PATH names ${own}, which does not exist`);
    return own;
  }
  const manifest = createRequire(import.meta.url)
    .resolve("@sparticuz/chromium")
    .replace(/(@sparticuz\/chromium)\/.*/, "$1/package.json");
  const { version } = JSON.parse(readFileSync(manifest, "utf8")) as { version: string };
  const folder = join(fileURLToPath(new URL("../../.cache", import.meta.url)), `chromium-${version}`);
  mkdirSync(folder, { recursive: true });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = folder;
  try {
    const { default: chromium } = await import("@sparticuz/chromium");
    const path = await chromium.executablePath();
    requireLibraries(path);
    return path;
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}

/** @throws Error naming the system libraries that the browser needs and this machine lacks. */
function requireLibraries(path: string): void {
  if (process.platform !== "linux") return;
  const missing = [
    ...(spawnSync("ldd", [path], { encoding: "utf8" }).stdout ?? "").matchAll(/(\S+) => not found/g),
  ].map((match) => match[1]);
  if (missing.length === 0) return;
  throw new Error(
    `The browser of the tests needs ${missing.join(", ")}: on Debian run "apt-get install libnss3 libnspr4", or name a browser of your own with CHROMIUM_PATH.`,
  );
}
