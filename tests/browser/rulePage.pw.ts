import { gzipSync } from "node:zlib";
import AxeBuilder from "@axe-core/playwright";
import { type Page, expect as playwright, test } from "@playwright/test";
import { ruleFiles, systems } from "@trialfit/rules";
import { countScripts } from "./countScripts.ts";

/** The evaluator is fetched and judges a swept outline: on a busy machine that takes its time. */
const expect = playwright.configure({ timeout: 60_000 });

const RULE = "/rules/rod-clears-cylinder-bottom/";
/** What a page may load as script before somebody touches it [bytes, compressed]. */
const BUDGET = 30 * 1024;

const inputs = (page: Page) => page.getByRole("form", { name: "Numbers of the rule" });
const verdict = (page: Page) => page.locator("live-rule").getByRole("status");

/** Compressed sizes of the scripts that a page loads and carries, by address. */
async function scriptsOf(page: Page, path: string): Promise<Map<string, number>> {
  const scripts = countScripts(page);
  await page.goto(path, { waitUntil: "networkidle" });
  const inline = await page
    .locator("script:not([src])")
    .evaluateAll((all) => all.map((one) => one.textContent ?? ""));
  return new Map([...(await scripts()), ["inline", gzipSync(inline.join("\n")).length]]);
}

test.describe("what a page loads before it is touched", () => {
  for (const path of [RULE, "/rules/", "/glossary/", "/units/"])
    test(`${path} carries at most 30 kB of script`, async ({ page }) => {
      const sizes = await scriptsOf(page, path);
      const total = [...sizes.values()].reduce((sum, size) => sum + size, 0);
      console.log(`${path} ${sizes.size} scripts, ${(total / 1024).toFixed(1)} kB compressed`);
      expect(sizes.size).toBeGreaterThan(1);
      expect(total).toBeGreaterThan(0);
      expect(total).toBeLessThanOrEqual(BUDGET);
    });

  test("the evaluator comes with the first touch, in a worker", async ({ page }) => {
    const workers: string[] = [];
    page.on("worker", (worker) => workers.push(worker.url()));
    await page.goto(RULE, { waitUntil: "networkidle" });
    expect(workers).toEqual([]);
    await page.getByLabel("Crankshaft: stroke", { exact: true }).focus();
    await expect.poll(() => workers.length).toBe(1);
  });
});

test.describe("a rule tried with other numbers", () => {
  test("verdict, band and what to do move with a number, and go back", async ({ page }) => {
    await page.goto(RULE);
    await expect(verdict(page)).toContainText("fails");
    const band = page.locator("live-rule .band").first();
    const before = await band.getAttribute("aria-label");
    await expect(page.locator("live-rule")).toContainText("What to do: The clearance is");
    await page.getByLabel("Crankshaft: stroke", { exact: true }).fill("80");
    await expect(verdict(page)).toContainText("holds");
    expect(await band.getAttribute("aria-label")).not.toBe(before);
    await expect(page.locator("live-rule")).not.toContainText("What to do: The clearance is");
    await expect(page.locator('live-rule [data-path="crankshaft.stroke"]')).toHaveAttribute(
      "data-changed",
      "",
    );
    await page.getByRole("button", { name: /Back to the invented build/ }).click();
    await expect(verdict(page)).toContainText("fails");
    await expect(band).toHaveAttribute("aria-label", before ?? "");
  });

  test("the limit moves with the use", async ({ page }) => {
    await page.goto(RULE);
    const limit = page.locator("live-rule .limit-text").first();
    await expect(limit).toHaveText(/1\.50? mm/);
    const use = page.getByLabel("Use", { exact: true });
    if (!(await use.isVisible())) await page.locator("live-rule summary").click();
    await use.selectOption("drag");
    await expect(limit).toHaveText(/1\.30? mm/);
  });

  test("another unit keeps the size, and the slider the unit", async ({ page }) => {
    await page.goto(RULE);
    await page.getByLabel("Unit of Crankshaft: stroke").selectOption("in");
    const stroke = page.getByLabel("Crankshaft: stroke", { exact: true });
    await expect(stroke).toHaveValue(/^3\.70/);
    await expect(verdict(page)).toContainText("fails");
    const slider = page.getByLabel("Move Crankshaft: stroke");
    await slider.focus();
    await page.keyboard.press("Home");
    await expect(verdict(page)).toContainText("holds");
    expect(Number(await stroke.inputValue())).toBeLessThan(3.2);
  });

  test("a size typed whole, with another unit, is judged as typed", async ({ page }) => {
    await page.goto(RULE);
    await page.getByLabel("Crankshaft: stroke", { exact: true }).fill("3.1 in");
    await expect(verdict(page)).toContainText("holds");
    await expect(page.locator("live-rule form").getByRole("alert").filter({ hasText: /\S/ })).toHaveCount(0);
  });

  test("a tolerance decides whether it is open", async ({ page }) => {
    await page.goto(RULE);
    await page.getByLabel("Tolerance of Connecting rod: outline uncertainty").fill("1.5");
    await expect(verdict(page)).toContainText("open");
    await expect(page.locator("live-rule")).toContainText("Measure first");
  });

  test("what is wrong stands at its field, and the old verdict is not taken for the new one", async ({
    page,
  }) => {
    await page.goto(RULE);
    const stroke = page.getByLabel("Crankshaft: stroke", { exact: true });
    await stroke.fill("ninety");
    const box = page.locator('live-rule [data-path="crankshaft.stroke"]');
    await expect(box.getByRole("alert")).toContainText("no number at its head");
    await expect(stroke).toHaveAttribute("aria-invalid", "true");
    await expect(verdict(page)).toContainText("there is no verdict on what stands there");
    await expect(page.locator("live-rule [data-output]")).not.toContainText("holds");
    // As the first that is entered, it takes the place of everything that the page was made with.
    await expect(page.locator("live-rule [data-output]")).not.toContainText("What to do");
    await stroke.fill("80");
    await expect(verdict(page)).toContainText("holds");
    await expect(page.locator("live-rule [data-output]")).not.toContainText("What to do: The clearance is");
    await expect(page.locator("live-rule .live-notes")).toHaveCount(1);
    await stroke.fill("ninety");
    await expect(verdict(page)).toContainText("there is no verdict on what stands there");
    const { violations } = await new AxeBuilder({ page }).include("live-rule form").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
    await stroke.fill("94");
    await expect(box.getByRole("alert")).toBeHidden();
    await expect(stroke).toHaveAttribute("aria-invalid", "false");
    await stroke.fill("");
    await expect(verdict(page)).toContainText("unknown");
    await expect(page.locator("live-rule")).toContainText("Missing: Crankshaft: stroke");
  });

  test("a person’s word is asked for, and taken", async ({ page }) => {
    await page.goto("/rules/caps-drawn-down-evenly/");
    await expect(verdict(page)).toContainText("unknown");
    await page.getByLabel("A person looked, and it was so").selectOption("yes");
    await expect(verdict(page)).toContainText("holds");
    await page.getByLabel("A person looked, and it was so").selectOption("no");
    await expect(verdict(page)).toContainText("fails");
  });

  test("works from the keyboard alone", async ({ page }) => {
    await page.goto(RULE);
    const first = inputs(page).getByRole("textbox").first();
    await first.focus();
    await page.keyboard.press("ControlOrMeta+A");
    await page.keyboard.type("x");
    await expect(inputs(page).getByRole("alert").first()).toBeVisible();
    let steps = 0;
    for (; steps < 60; steps += 1) {
      await page.keyboard.press("Tab");
      if (
        await page.getByRole("button", { name: /Back to/ }).evaluate((one) => one === document.activeElement)
      )
        break;
    }
    expect(steps).toBeLessThan(60);
    await page.keyboard.press("Enter");
    await expect(first).toHaveValue(await first.evaluate((one) => (one as HTMLInputElement).defaultValue));
    await expect(verdict(page)).toContainText("fails");
  });
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });
  test("the page says what needs it, and shows the verdict computed before", async ({ page }) => {
    await page.goto(RULE);
    await expect(page.locator("live-rule")).toContainText("Changing the numbers needs JavaScript");
    await expect(verdict(page)).toContainText("fails");
    await expect(inputs(page)).toBeHidden();
  });
});

test("begins with what must hold, and leads to the neighbours of its system", async ({ page }) => {
  await page.goto(RULE);
  const first = page.locator(".sheet > *").first();
  await expect(first).toContainText("What must hold");
  await expect(first).toContainText("at least 1.5 mm");
  const system = ruleFiles
    .filter((one) => one.system === "clearances")
    .map(({ id }) => id)
    .sort();
  const at = system.indexOf("rod-clears-cylinder-bottom");
  const turns = page.getByRole("navigation", { name: `Rules of the system ${systems.clearances}` });
  await expect(turns).toContainText(`${at + 1} of ${system.length}`);
  await turns.locator('[rel="prev"]').click();
  await expect(page).toHaveURL(new RegExp(`/rules/${system[at - 1]}/`));
});
