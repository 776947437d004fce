import { expect, type Page, test } from "@playwright/test";
import { settled, WORK } from "./onWorkbench.ts";

test.describe.configure({ timeout: 2 * WORK });

/** Lets the evaluator begin only when it is told to. */
async function holdWorker(page: Page): Promise<() => void> {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route(/\/worker-[^/]*\.js$/, async (route) => {
    await held;
    await route.continue();
  });
  return release;
}

/** What the page says of every finding: its verdict, title and numbers. */
const said = (page: Page) => page.locator(".workbench .finding > summary").allTextContents();

test("verdicts of the demo stand on the page before the evaluator is there, and are what it then says", async ({
  page,
}) => {
  const release = await holdWorker(page);
  await page.goto("/workbench/");
  const findings = page.locator(".workbench .finding > summary");
  await expect(findings.first()).toBeVisible();
  await expect(
    page.getByText("as worked out when this site was built; being worked out here…"),
  ).toBeVisible();
  await expect(page.locator(".workbench.busy")).toBeVisible();
  const folded = page.locator(".workbench .section:not([open]) > summary");
  await expect(async () => {
    if ((await folded.count()) > 0) await folded.first().click({ timeout: 5_000 });
    expect(await findings.count()).toBeGreaterThan(300);
  }).toPass();
  const [before, counts] = [
    await said(page),
    await page.locator(".workbench .counts .number").allTextContents(),
  ];

  release();
  await settled(page);
  expect(await said(page)).toEqual(before);
  const after = await page.locator(".workbench .counts .number").allTextContents();
  expect(after.slice(0, -1)).toEqual(counts.slice(0, -1));
  await expect(page.getByText(/^first verdicts after .*, all after /)).toBeVisible();
});

test("another build than the demo is never shown with the demo's verdicts", async ({ page }) => {
  await page.goto("/workbench/");
  await page.evaluate(() => {
    for (const key of Object.keys(localStorage)) localStorage.removeItem(key);
  });
  const release = await holdWorker(page);
  await page.reload();
  await expect(page.locator(".workbench .finding > summary").first()).toBeVisible();
  await page.getByLabel("Open a file…").setInputFiles({
    name: "mine.yaml",
    mimeType: "application/yaml",
    buffer: Buffer.from('trialfit: "1"\nname: Mine\nuse: street\nblock: { bore: 86 mm ± 0.01 }\n'),
  });
  release();
  await expect(page.locator(".workbench .name")).toHaveText("Mine", { timeout: WORK });
  await settled(page);
  await expect(page.getByText("as worked out when this site was built")).toHaveCount(0);
  // A kept build of one's own is opened without them too.
  await page.reload();
  await expect(page.locator(".workbench .name")).toHaveText("Mine", { timeout: WORK });
  await expect(page.getByText("as worked out when this site was built")).toHaveCount(0);
});
