// npm test: install what is missing, then everything that must be true: lint, types, builds, tests, pages.
import { mkdirSync, readFileSync } from "node:fs";
import { install, root, tool, total } from "./steps.mjs";

const results = `${root}.cache/test-results`;
install();
mkdirSync(results, { recursive: true });
tool("lint and format", ["biome", "check", "--error-on-warnings", "."]);
tool("build and check types", ["turbo", "run", "build", "typecheck", "--output-logs=errors-only"]);
tool("tests", [
  "vitest",
  "run",
  "--config",
  ".config/vitest.ts",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${results}/vitest.json`,
]);
tool("pages in a browser", ["playwright", "test", "--config", "tests/browser/playwright.config.ts"], {
  env: { PLAYWRIGHT_JSON_OUTPUT_FILE: `${results}/playwright.json`, TRIALFIT_RETRIES: "1" },
});

const read = (name) => JSON.parse(readFileSync(`${results}/${name}.json`, "utf8"));
const unit = read("vitest");
const pages = read("playwright").stats;
console.log(`\nEverything in ${total()}.`);
console.log(
  `${unit.numPassedTests + pages.expected} passed, ${unit.numFailedTests + pages.unexpected} failed, ${unit.numPendingTests + pages.skipped} skipped, ${pages.flaky} at the second try`,
);
if (pages.flaky > 1) {
  console.error("More than one page test passed at the second try only: that is no accident of the machine.");
  process.exit(1);
}
