import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const at = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Every package's tests run against the sources of its neighbours, so a stale build cannot hide a break. */
export default defineConfig({
  resolve: {
    alias: [
      { find: /^@trialfit\/mechanics$/, replacement: at("packages/mechanics/src/index.ts") },
      { find: /^@trialfit\/rules$/, replacement: at("rules/src/index.ts") },
      { find: /^trialfit$/, replacement: at("packages/core/src/index.ts") },
      { find: /^trialfit\/papers$/, replacement: at("packages/core/src/papers.ts") },
    ],
  },
  test: {
    setupFiles: [at(".config/vitest.setup.ts")],
    include: ["**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**"],
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
