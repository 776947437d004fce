import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "@playwright/test";
import { buildSync } from "esbuild";
import { evaluate, readBuildText } from "trialfit";

const text = readFileSync(new URL("../../packages/core/demo/larkspur-hill.yaml", import.meta.url), "utf8");

/** The published evaluator bundled for a page, as a user's own build would do it. */
function bundle(): string {
  return buildSync({
    stdin: {
      contents:
        'import { evaluate, readBuildText } from "trialfit"; globalThis.check = async (text) => JSON.stringify(await evaluate(readBuildText(text)));',
      resolveDir: fileURLToPath(new URL("..", import.meta.url)),
    },
    bundle: true,
    format: "esm",
    platform: "browser",
    minify: true,
    write: false,
  }).outputFiles[0]!.text;
}

/** Places where two plain values differ by more than a ten-millionth part. */
function differences(a: unknown, b: unknown, path = ""): readonly string[] {
  if (typeof a === "number" && typeof b === "number") {
    return Math.abs(a - b) <= 1e-7 * Math.max(Math.abs(a), Math.abs(b)) + 1e-12
      ? []
      : [`${path}: ${a} or ${b}`];
  }
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null)
    return a === b ? [] : [`${path}: ${a} or ${b}`];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) =>
    differences((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`),
  );
}

test("evaluates in a page that forbids generated code and every connection, as in Node", async ({ page }) => {
  const script = bundle();
  const requests: string[] = [];
  const policy = "default-src 'none'; script-src 'self'";
  await page.route("**/*", (route) => {
    const { pathname } = new URL(route.request().url());
    requests.push(pathname);
    if (pathname === "/check.js") return route.fulfill({ contentType: "text/javascript", body: script });
    return route.fulfill({
      contentType: "text/html",
      headers: { "content-security-policy": policy },
      body: '<!doctype html><title>check</title><script type="module" src="/check.js"></script>',
    });
  });
  const violations: string[] = [];
  page.on("console", (message) => violations.push(message.text()));
  page.on("pageerror", (error) => violations.push(error.message));
  await page.goto("/page");
  await page.waitForFunction(() => "check" in globalThis);
  const inPage = await page.evaluate(
    async (input) => (globalThis as unknown as { check(text: string): Promise<string> }).check(input),
    text,
  );
  const inNode = await evaluate(readBuildText(text));
  const [found, expected] = [JSON.parse(inPage), JSON.parse(JSON.stringify(inNode))];
  expect(found.verdicts.map((one: { verdict: string }) => one.verdict)).toEqual(
    inNode.verdicts.map((one) => one.verdict),
  );
  // Sine and cosine differ in their last digit between the two runtimes, and every search carries that on.
  expect(differences(found, expected)).toEqual([]);
  expect(violations).toEqual([]);
  expect(requests.filter((path) => path !== "/favicon.ico")).toEqual(["/page", "/check.js"]);
  console.log(`bundle ${(script.length / 1024).toFixed(0)} kB`);
});
