import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "@playwright/test";
import { ruleFiles, sources } from "@trialfit/rules";
import { evaluate, fields, quantities, readBuildText } from "trialfit";
import { sitePages } from "../site/sitePages.ts";

const demo = (name: string) =>
  readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const pages = [
  "/",
  "/rules/",
  "/rules/rod-clears-cylinder-bottom/",
  "/rules/rod-ratio-usual/",
  "/quantities/",
  "/quantities/compressionRatio/",
  "/quantities/rodToCylinderClearance/",
  "/sources/",
  "/build-file/",
  "/sets/",
  ...sitePages.filter((path) => path.startsWith("/guides/")),
];

for (const path of pages) {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`${path} in ${colorScheme}: whole, readable, without an accessibility violation`, async ({
      page,
    }) => {
      const errors: string[] = [];
      page.on("pageerror", (error) => errors.push(error.message));
      page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.goto(path);
      await expect(page.locator("h1")).toHaveCount(1);
      const { clientWidth, scrollWidth } = await page.evaluate(() => {
        const { clientWidth, scrollWidth } = document.documentElement;
        return { clientWidth, scrollWidth };
      });
      expect(scrollWidth).toBeLessThanOrEqual(clientWidth);
      // The search button's shortcut label is the theme's own.
      const { violations } = await new AxeBuilder({ page }).exclude("site-search").analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
      expect(errors).toEqual([]);
    });
  }
}

test("home tells the job and shows real findings", async ({ page }) => {
  await page.goto("/");
  const report = await evaluate(readBuildText(demo("larkspur-hill")));
  const rod = report.verdicts.find((one) => one.rule === "rod-clears-cylinder-bottom")!;
  await expect(page.getByRole("link", { name: rod.title }).first()).toBeVisible();
  await expect(page.locator("main")).toContainText("1.12 mm (0.80 to 1.45 mm)");
});

test.describe("catalog", () => {
  const shown = "rule-filter li:visible";
  test("filters, counts, keeps the filter in the address, and comes back with it", async ({ page }) => {
    await page.goto("/rules/");
    await expect(page.locator(shown)).toHaveCount(ruleFiles.length);
    await page.locator('select[name="part"]').selectOption("crankshaft");
    const ofCrankshaft = ruleFiles.filter((rule) => rule.parts.includes("crankshaft")).length;
    await expect(page.locator(shown)).toHaveCount(ofCrankshaft);
    expect(new URL(page.url()).searchParams.get("part")).toBe("crankshaft");
    await page.reload();
    await expect(page.locator(shown)).toHaveCount(ofCrankshaft);
    await page.getByLabel("Words").fill("oil groove");
    await expect.poll(() => page.locator(shown).count()).toBeLessThan(ofCrankshaft);
  });
  test("works from the keyboard", async ({ page }) => {
    await page.goto("/rules/");
    await page.getByLabel("Words").focus();
    await page.keyboard.type("pin bore");
    await expect.poll(() => page.locator(shown).count()).toBeLessThan(ruleFiles.length);
    await expect(page.locator(`${shown} >> text=oil ring groove`).first()).toBeVisible();
  });
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });
  test("the catalog is the complete plain list", async ({ page }) => {
    await page.goto("/rules/");
    for (const rule of ruleFiles)
      await expect(page.locator(`a[href$="/rules/${rule.id}/"]`).first()).toBeAttached();
  });
});

test("every rule and quantity has its page, with the evaluator's own numbers", async ({ request }) => {
  const report = await evaluate(readBuildText(demo("larkspur-hill")));
  let worked = 0;
  for (const verdict of report.verdicts) {
    const response = await request.get(`/rules/${verdict.rule}/`);
    expect(response.status(), verdict.rule).toBe(200);
    const html = await response.text();
    expect(html, verdict.rule).toContain(`rules/${verdict.system}/${verdict.rule}.yaml`);
    worked += html.includes("Larkspur Hill") ? 1 : 0;
  }
  expect(worked).toBe(ruleFiles.length);
  for (const id of quantities.keys())
    expect((await request.get(`/quantities/${id}/`)).status(), id).toBe(200);
  const sourcePage = await (await request.get("/sources/")).text();
  for (const id of Object.keys(sources)) expect(sourcePage, id).toContain(id);
  const fieldPage = await (await request.get("/build-file/")).text();
  for (const path of fields.keys()) expect(fieldPage, path).toContain(path);
});

test("search finds a rule", async ({ page }) => {
  await page.goto("/");
  await page.locator("site-search button").first().click();
  await page.locator("dialog input").fill("support rail");
  await expect(page.locator("dialog a", { hasText: "oil ring groove" }).first()).toBeVisible();
});

test("the API reference is part of the site", async ({ request }) => {
  const html = await (await request.get("/api/core/functions/evaluate/")).text();
  expect(html).toContain("read → derive → judge → report");
});
