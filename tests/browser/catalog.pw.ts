import { type Page, expect as playwright, test } from "@playwright/test";
import { ruleFiles } from "@trialfit/rules";

/** A busy machine fetches and filters slowly. */
const expect = playwright.configure({ timeout: 30_000 });

const filter = (page: Page) => page.getByRole("search", { name: "Filter the rules" });
const shown = (page: Page) => page.locator("rule-filter li[data-rule]:visible");
const order = (page: Page) => page.getByRole("region", { name: "What to ask the seller for" });

test("filters by use and by the standing of a limit", async ({ page }) => {
  await page.goto("/rules/");
  await filter(page).getByLabel("Standing of a limit").selectOption("from-memory");
  const fromMemory = ruleFiles.filter((rule) =>
    Object.values(rule.limits ?? {}).some(({ standing }) => standing === "from-memory"),
  ).length;
  expect(fromMemory).toBeGreaterThan(0);
  await expect(shown(page)).toHaveCount(fromMemory);
  await filter(page).getByLabel("Standing of a limit").selectOption("");
  await filter(page).getByLabel("Differs for the use").selectOption("drag");
  await expect(page.getByRole("link", { name: /The rod clears the bottom of the cylinder/ })).toBeVisible();
  const count = await shown(page).count();
  expect(count).toBeGreaterThan(0);
  expect(count).toBeLessThan(ruleFiles.length);
  await expect(filter(page).getByRole("status")).toHaveText(`${count} of ${ruleFiles.length} rules`);
});

test("the back button takes back a choice, the address can be shared", async ({ page, context }) => {
  await page.goto("/rules/");
  await filter(page).getByLabel("Weight").selectOption("stop");
  const stops = ruleFiles.filter(({ otherwise }) => otherwise.weight === "stop").length;
  await expect(shown(page)).toHaveCount(stops);
  await filter(page).getByLabel("Piston", { exact: true }).check();
  const both = await shown(page).count();
  expect(both).toBeGreaterThan(0);
  expect(both).toBeLessThan(stops);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(shown(other)).toHaveCount(both);
  await expect(filter(other).getByLabel("Piston", { exact: true })).toBeChecked();
  await other.close();
  await page.goBack();
  await expect(shown(page)).toHaveCount(stops);
  await page.goBack();
  await expect(shown(page)).toHaveCount(ruleFiles.length);
});

test("an empty list says so, and everything can be cleared", async ({ page }) => {
  await page.goto("/rules/?text=nosuchwordanywhere&weight=stop");
  await expect(shown(page)).toHaveCount(0);
  const empty = page.getByText("No rule has all of this.");
  await expect(empty).toBeVisible();
  await empty.getByRole("button", { name: "Clear all" }).click();
  await expect(shown(page)).toHaveCount(ruleFiles.length);
  await expect(empty).toBeHidden();
  expect(new URL(page.url()).search).toBe("");
});

test.describe("I am about to order", () => {
  test("wakes the rules that rest on the parts, and lists what to ask for", async ({ page }) => {
    await page.goto("/rules/");
    await expect(order(page)).toBeHidden();
    await filter(page).getByLabel("Crankshaft", { exact: true }).check();
    await filter(page).getByLabel("Piston", { exact: true }).check();
    const list = order(page);
    await expect(list.getByRole("heading", { name: "Crankshaft" })).toBeVisible();
    await expect(list.getByRole("heading", { name: "Piston", exact: true })).toBeVisible();
    await expect(list).toContainText("Stroke");
    await expect(list).toContainText("mm, with its tolerance");
    await expect(list).toContainText(/Asked by \d+ rules?, \d+ stops?/);
    expect(await list.locator("dl > div").count()).toBeGreaterThan(20);
    // A rule that is not about the piston but rests on its mass.
    await expect(page.getByRole("link", { name: /The rod clears the bottom/ })).toBeVisible();
    const text = await list.getByLabel("What to ask the seller for, as plain text").inputValue();
    expect(text).toMatch(/^Crankshaft\n- /);
    expect(text).toContain("\n\nPiston\n- ");
    await filter(page).getByLabel("Crankshaft", { exact: true }).uncheck();
    await expect(list.getByRole("heading", { name: "Crankshaft" })).toHaveCount(0);
  });

  test("follows the other filters", async ({ page }) => {
    await page.goto("/rules/?order=piston");
    await expect.poll(() => order(page).locator("dl > div").count()).toBeGreaterThan(0);
    const all = await order(page).locator("dl > div").count();
    await filter(page).getByLabel("System").selectOption("rings");
    await expect.poll(() => order(page).locator("dl > div").count()).toBeLessThan(all);
    expect(await order(page).locator("dl > div").count()).toBeGreaterThan(0);
  });

  test("the list is copied, and printed without the rules", async ({ page, context }) => {
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.goto("/rules/?order=ring-set");
    await expect(order(page).getByRole("heading", { name: "Ring set" })).toBeVisible();
    await order(page).getByRole("button", { name: "Copy as text" }).click();
    await expect(order(page).getByRole("status")).toHaveText("Copied");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Ring set\n- /);
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await order(page).getByRole("button", { name: "Print the list" }).click();
    await page.emulateMedia({ media: "print" });
    await expect(order(page)).toBeVisible();
    await expect(shown(page)).toHaveCount(0);
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    await expect(shown(page).first()).toBeVisible();
  });

  test("works from the keyboard", async ({ page }) => {
    await page.goto("/rules/");
    await filter(page).getByLabel("Rod bolts", { exact: true }).focus();
    await page.keyboard.press("Space");
    await expect(order(page).getByRole("heading", { name: "Rod bolts" })).toBeVisible();
    await page.keyboard.press("Space");
    await expect(order(page)).toBeHidden();
  });
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });
  test("the whole list stands there, and what needs JavaScript is said", async ({ page }) => {
    await page.goto("/rules/");
    await expect(page.getByText("Without JavaScript this is the whole list")).toBeVisible();
    await expect(shown(page)).toHaveCount(ruleFiles.length);
    await expect(order(page)).toBeHidden();
  });
});
