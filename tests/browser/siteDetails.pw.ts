import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "@playwright/test";

const RULE = "/rules/rod-clears-cylinder-bottom/";

test("every page has a menu and a switch of the theme", async ({ page, viewport }) => {
  for (const path of ["/", "/workbench/", RULE]) {
    await page.goto(path);
    const menu = page.getByRole("button", { name: "Menu" });
    if (viewport!.width < 800) await menu.click();
    else await expect(menu).toBeHidden();
    const theme = page.getByLabel("Select theme").locator("visible=true");
    await theme.selectOption("dark");
    await expect(page.locator("html")).toHaveAttribute("data-theme", "dark");
    await theme.selectOption("light");
    await expect(page.locator("html")).toHaveAttribute("data-theme", "light");
    await expect(
      page
        .getByRole("link", { name: "Glossary" })
        .or(page.getByRole("link", { name: "Quantities" }))
        .first(),
    ).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).exclude("nav.sidebar").analyze();
    expect(violations.map(({ id, nodes }) => `${path} ${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
  }
});

test("what a button says is in its name", async ({ page }) => {
  await page.goto(RULE);
  const { violations } = await new AxeBuilder({ page })
    .include("header")
    .withRules(["label-content-name-mismatch"])
    .analyze();
  expect(violations.map(({ nodes }) => nodes[0]?.html)).toEqual([]);
});

test("texts of bands stay inside of their drawing", async ({ page }) => {
  for (const path of ["/", RULE, "/rules/main-bearing-clearance/"]) {
    await page.goto(path);
    const bands = page.locator("svg.band");
    const cut = await bands.evaluateAll((svgs) =>
      svgs.flatMap((svg) => {
        const frame = svg.getBoundingClientRect();
        return [...svg.querySelectorAll("text")]
          .filter((text) => {
            const { left, right } = text.getBoundingClientRect();
            return left < frame.left - 0.5 || right > frame.right + 0.5;
          })
          .map((text) => text.textContent);
      }),
    );
    expect(await bands.count()).toBeGreaterThan(0);
    expect(cut, path).toEqual([]);
  }
});

test("a verdict that is being worked out is dimmed and says so; what is no number is said at once", async ({
  page,
}) => {
  // A slow line: the evaluator does not come before the test lets it.
  let go = () => {};
  const gate = new Promise<void>((resolve) => {
    go = resolve;
  });
  await page.route(/\/_astro\/(worker|LiveJudge)-.*\.js$/, async (route) => {
    await gate;
    await route.continue();
  });
  await page.goto(RULE);
  const output = page.locator("live-rule [data-output]");
  const stroke = page.locator('live-rule [data-path="crankshaft.stroke"] [data-part="value"]');
  await stroke.fill("80");
  await expect(output).toHaveAttribute("aria-busy", "true");
  const said = await output
    .locator('[role="status"]')
    .evaluate((one) => getComputedStyle(one, "::after").content);
  expect(said).toContain("being worked out");
  const drawing = output.locator("svg").first();
  const opacity = await drawing.evaluate((one) => {
    let least = 1;
    for (let at: Element | null = one; at !== null; at = at.parentElement)
      least = Math.min(least, Number(getComputedStyle(at).opacity));
    return least;
  });
  expect(opacity).toBeLessThan(0.6);
  await stroke.fill("abc");
  await expect(page.locator('live-rule [data-path="crankshaft.stroke"] .error')).toHaveText(
    "This is no number.",
  );
  go();
  await stroke.fill("80");
  await expect(output).toHaveAttribute("aria-busy", "false", { timeout: 120_000 });
  await expect(page.locator('live-rule [data-path="crankshaft.stroke"] .error')).toBeHidden();
});

test.describe("without JavaScript", () => {
  test.use({ javaScriptEnabled: false });
  for (const colorScheme of ["light", "dark"] as const)
    test(`a system that asks for ${colorScheme} gets it`, async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.goto(RULE);
      const color = await page.locator("body").evaluate((body) => getComputedStyle(body).backgroundColor);
      const [red = 0] = (color.match(/[\d.]+/g) ?? []).map(Number);
      expect(red > 128).toBe(colorScheme === "light");
    });
});

test("without a network, pages that were visited open, and others say that they were not kept", async ({
  page,
  context,
}) => {
  test.setTimeout(240_000);
  await page.goto(RULE);
  await page.waitForLoadState("networkidle");
  await page.goto("/workbench/");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.goto("/guides/how-sure/");
  await page.goto("/");
  await context.setOffline(true);
  for (const [path, heading] of [
    [RULE, "clear"],
    ["/guides/how-sure/", "How sure is it"],
    ["/", "Will these parts fit"],
  ] as const) {
    await page.goto(path);
    await expect(page.locator("h1")).toContainText(heading);
  }
  await page.goto("/glossary/");
  await expect(page.locator("h1")).toHaveText("Not kept on this machine");
  await expect(page.getByText("There is no network now")).toBeVisible();
  expect(page.url()).toMatch(/\/glossary\/$/);
  await context.setOffline(false);
  await page.reload();
  await expect(page.locator("h1")).toHaveText("Glossary");
});

test("a rule leads to its file", async ({ page, request }) => {
  await page.goto(RULE);
  const link = page.getByRole("link", { name: /rod-clears-cylinder-bottom\.yaml/ });
  const answer = await request.get((await link.getAttribute("href"))!);
  expect(await answer.text()).toMatch(/^id: rod-clears-cylinder-bottom$/m);
});
