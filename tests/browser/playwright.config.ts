import { fileURLToPath } from "node:url";
import { defineConfig } from "@playwright/test";
import { chromiumPath } from "./chromium.ts";

// The main process unpacks the browser once; the workers inherit where it is.
const executablePath = await chromiumPath();
process.env.CHROMIUM_PATH = executablePath;

// Another clone on the same machine can ask for another one.
const port = Number(process.env.TRIALFIT_PORT ?? 4329);
const launchOptions = { executablePath, args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] };

export default defineConfig({
  testDir: ".",
  testMatch: "*.pw.ts",
  outputDir: "../../.cache/test-results/playwright",
  workers: 2,
  timeout: 180_000,
  // A browser may hang on a loaded machine. What passes at the second try only is counted, and `npm test` bears one.
  retries: process.env.TRIALFIT_RETRIES === undefined ? 0 : 1,
  reporter: [
    ["line"],
    [
      "json",
      { outputFile: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ?? "../../.cache/test-results/playwright.json" },
    ],
  ],
  use: { baseURL: `http://localhost:${port}`, launchOptions },
  projects: [
    { name: "desktop", use: { viewport: { width: 1440, height: 900 } } },
    {
      name: "phone",
      // What looks at every page, or at paper, looks once.
      testIgnore: /(everyPage|papers|print|guides)\.pw\.ts$/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true },
    },
  ],
  webServer: {
    command: `npx --no-install astro preview --root site --port ${port}`,
    cwd: fileURLToPath(new URL("../..", import.meta.url)),
    url: `http://localhost:${port}`,
    timeout: 60_000,
    env: { ASTRO_TELEMETRY_DISABLED: "1" },
    stdout: "ignore",
  },
});
