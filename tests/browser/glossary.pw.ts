import { expect as playwright, test } from "@playwright/test";
import { unitTable } from "trialfit";
import { countScripts } from "./countScripts.ts";

/** A busy machine fetches and filters slowly. */
const expect = playwright.configure({ timeout: 30_000 });

test.describe("glossary", () => {
  test("has at least 120 terms, each used by a field, a quantity or a rule", async ({ page }) => {
    await page.goto("/glossary/");
    const terms = page.locator("word-filter [data-text]");
    expect(await terms.count()).toBeGreaterThanOrEqual(120);
    const uses = await terms.locator("summary").allTextContents();
    expect(uses.length).toBe(await terms.count());
    for (const use of uses) expect(use).toMatch(/Used by \d+ (field|quantit|rule)/);
    const ids = await terms.evaluateAll((all) => all.map((one) => one.id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("every link of a term leads somewhere", async ({ page, request }) => {
    await page.goto("/glossary/");
    const links = await page
      .locator("word-filter dl a")
      .evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).pathname));
    const pages = [...new Set(links)];
    expect(pages.length).toBeGreaterThan(100);
    for (const path of pages) expect((await request.get(path)).status(), path).toBe(200);
  });

  test("finds a word from the keyboard, and says when there is none", async ({ page }) => {
    await page.goto("/glossary/");
    await page.getByRole("searchbox", { name: "Find a word" }).focus();
    await page.keyboard.type("gudgeon");
    await expect(page.locator("word-filter [data-text]:visible")).toHaveCount(1);
    await expect(page.locator("word-filter [data-text]:visible")).toContainText("Piston pin");
    await page.keyboard.type("zzz");
    await expect(page.getByText(/No words with/)).toBeVisible();
  });

  test("says what every verdict means, and a rule page leads to its terms", async ({ page }) => {
    await page.goto("/rules/rod-clears-cylinder-bottom/");
    const terms = page.getByRole("region", { name: "Terms on this page" });
    await terms.getByRole("link", { name: "Big end" }).click();
    await expect(page).toHaveURL(/\/glossary\/#term-big-end$/);
    const evaluator = page.getByRole("region", { name: "Words of reports and rules" });
    for (const word of [
      "Holds",
      "Fails",
      "Open",
      "Unknown",
      "Not applicable",
      "Band",
      "Finding",
      "Set of rules",
    ])
      await expect(evaluator.getByText(word, { exact: true }).first()).toBeAttached();
  });
});

test.describe("units", () => {
  test("lists every unit of the table with its exact factor", async ({ page }) => {
    await page.goto("/units/");
    const every = page.getByRole("region", { name: "Every unit" });
    await expect(every.locator("tbody tr")).toHaveCount(unitTable.length);
    const row = (symbol: string) =>
      every.locator("tr", { has: page.locator("th code", { hasText: new RegExp(`^${symbol}$`) }) });
    // NIST SP 811 (2008), appendix B.8: inch, pound-force, horsepower (550 ft lbf/s), revolution per minute.
    await expect(row("in")).toContainText("0.0254 m");
    await expect(row("lbf")).toContainText("4.4482216152605 N");
    await expect(row("hp")).toContainText("745.69987158227022 W");
    await expect(row("rpm")).toContainText("π/30 rad/s");
  });

  test("shows refused spellings with the reader’s own message", async ({ page }) => {
    await page.goto("/units/");
    const refused = page.getByRole("region", { name: "What is refused" });
    await expect(refused.locator("tr", { hasText: "88,5 mm" })).toContainText("decimal sign as a point");
    await expect(refused.locator("tbody tr")).toHaveCount(10);
  });

  test("converts as somebody types, and says what is wrong", async ({ page }) => {
    await page.goto("/units/", { waitUntil: "networkidle" });
    const scripts = countScripts(page);
    const size = page.getByLabel("Size with its unit");
    await size.focus();
    await page.keyboard.type("1 in ± 0.001");
    const rows = page.locator("unit-converter dl");
    await expect(rows).toContainText("25.4 mm (25.3746 to 25.4254 mm)".replace(" to", " mm to"));
    const weight = [...(await scripts()).values()].reduce((sum, size) => sum + size, 0);
    console.log(`converter ${(weight / 1024).toFixed(1)} kB compressed`);
    expect(weight).toBeGreaterThan(0);
    await size.fill("1 kg");
    await expect(page.getByRole("alert")).toContainText("measures something else");
    await page.getByLabel("What it measures").selectOption({ label: "Mass" });
    await expect(rows).toContainText("1000 g");
    await expect(page.getByRole("alert")).toHaveCount(0);
  });
});

for (const path of ["/glossary/", "/units/"])
  test(`search finds ${path}`, async ({ page }) => {
    await page.goto("/");
    await page.locator("site-search button").first().click();
    await page.locator("dialog input").fill(path === "/units/" ? "exact factor furlong" : "gudgeon");
    await expect(page.locator(`dialog a[href*="${path}"]`).first()).toBeVisible();
  });
