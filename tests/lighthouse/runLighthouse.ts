import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromiumPath } from "../browser/chromium.ts";

/** Fetched when it is asked for: with what it brings it is larger than everything else that the tests need. */
const TOOL = "lighthouse@13.5.0";
const LEAST = 95;
// Another clone on the same machine can ask for another one.
const PORT = Number(process.env.TRIALFIT_PORT ?? 4331);
const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
const pages = ["/", "/rules/", "/rules/rod-clears-cylinder-bottom/", "/workbench/", "/guides/first-check/"];
const root = fileURLToPath(new URL("../..", import.meta.url));

interface Result {
  readonly categories: Readonly<Record<string, { readonly score: number | null }>>;
  readonly audits: Readonly<
    Record<string, { readonly id: string; readonly score: number | null; readonly title: string }>
  >;
}

/** One page as the tool sees it on a slow phone. */
function examine(path: string, chromium: string): Result {
  const folder = mkdtempSync(join(tmpdir(), "trialfit-lighthouse-"));
  const file = join(folder, "result.json");
  try {
    const { status, stderr } = spawnSync(
      "npx",
      [
        "--yes",
        TOOL,
        `http://localhost:${PORT}${path}`,
        "--quiet",
        "--output=json",
        `--output-path=${file}`,
        `--only-categories=${categories.join(",")}`,
        "--chrome-flags=--headless --no-sandbox --disable-gpu --disable-dev-shm-usage",
      ],
      { cwd: folder, encoding: "utf8", env: { ...process.env, CHROME_PATH: chromium }, timeout: 300_000 },
    );
    if (status !== 0) throw new Error(`${path}: the tool ended ${status}\n${stderr}`);
    return JSON.parse(readFileSync(file, "utf8")) as Result;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Waits until the site answers. */
async function answered(): Promise<void> {
  for (let attempt = 0; attempt < 240 && server.exitCode === null; attempt += 1) {
    const answer = await fetch(`http://localhost:${PORT}/`).catch(() => undefined);
    if (answer?.ok === true) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error(`the site does not answer on port ${PORT}`);
}

const server = spawn("npx", ["--no-install", "astro", "preview", "--root", "site", "--port", String(PORT)], {
  cwd: root,
  stdio: ["ignore", "ignore", "inherit"],
  detached: true,
});
let below = 0;
try {
  await answered();
  const chromium = await chromiumPath();
  for (const path of pages) {
    const { categories: found, audits } = examine(path, chromium);
    const scores = categories.map((name) => [name, Math.round((found[name]?.score ?? 0) * 100)] as const);
    console.log(`${path}: ${scores.map(([name, score]) => `${name} ${score}`).join(", ")}`);
    if (scores.every(([, score]) => score >= LEAST)) continue;
    below += 1;
    for (const { id, title, score } of Object.values(audits))
      if (score !== null && score < 0.9) console.log(`    ${id} ${score}: ${title}`);
  }
} finally {
  if (server.exitCode === null) process.kill(-server.pid!);
}
console.log(
  below === 0 ? `All of ${pages.length} pages have at least ${LEAST}.` : `${below} pages are below ${LEAST}.`,
);
process.exitCode = below === 0 ? 0 : 1;
