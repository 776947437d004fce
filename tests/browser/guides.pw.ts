import { fileURLToPath } from "node:url";
import { expect, test } from "@playwright/test";
import { buildSync } from "esbuild";
import { type FencedBlock, fencedBlocks } from "../../site/src/data/fencedBlocks.ts";
import { pageNames, readPage } from "../guides/pages.ts";

/** The blocks of the guides that are meant for a browser. */
const blocks = pageNames.flatMap((name) => fencedBlocks(readPage(name)));
const forBrowser = blocks.filter(({ options }) => options.browser !== undefined);
const named = (title: string): FencedBlock => blocks.find(({ options }) => options.title === title)!;

/** The script of a guide, bundled as the guide says. */
function bundled(block: FencedBlock): string {
  return buildSync({
    stdin: {
      contents: block.text,
      loader: "ts",
      resolveDir: fileURLToPath(new URL("..", import.meta.url)),
    },
    bundle: true,
    format: "esm",
    write: false,
  }).outputFiles[0]!.text;
}

test("the page that a guide shows checks a build, under the policy that the guide states", async ({
  page,
}) => {
  expect(forBrowser.map(({ language }) => language)).toEqual(["html", "ts"]);
  const guide = pageNames.find((name) => readPage(name).includes("default-src 'none'; script-src 'self'"))!;
  const build = fencedBlocks(readPage(guide)).find(({ language }) => language === "yaml")!;
  const refused: string[] = [];
  page.on("console", (message) => message.type() === "error" && refused.push(message.text()));
  page.on("pageerror", (error) => refused.push(error.message));
  await page.route("**/*", (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === "/page.js")
      return route.fulfill({ contentType: "text/javascript", body: bundled(named("page.ts")) });
    if (pathname !== "/") return route.fulfill({ status: 204 });
    return route.fulfill({
      contentType: "text/html; charset=utf-8",
      headers: { "content-security-policy": "default-src 'none'; script-src 'self'" },
      body: named("index.html").text,
    });
  });
  await page.goto("/");
  await page.getByLabel("Build").fill(build.text);
  await page.getByRole("button", { name: "Check" }).click();
  await expect(page.locator("#findings")).toContainText("NOT SOUND");
  await page.getByLabel("Build").fill("block: { bore: 86.5 }");
  await page.getByRole("button", { name: "Check" }).click();
  await expect(page.locator("#findings")).toContainText("a number without a unit");
  expect(refused).toEqual([]);
});
