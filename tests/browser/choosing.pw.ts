import { expect, type Page, test } from "@playwright/test";
import {
  begin,
  complaintsOf,
  cutOnPaper,
  expectAccessible,
  fileOf,
  settled,
  small,
  WORK,
} from "./onWorkbench.ts";

test.describe.configure({ timeout: 400_000 });

/** Width between the margins of A4 (16 mm each) [CSS pixels]. */
const A4 = Math.floor(((210 - 32) / 25.4) * 96);

/** A rod and a piston of which only the sum is wanted. */
const wanted = small
  .replace("length: 144 mm ± 0.02", 'length: "? 138 mm to 148 mm in steps of 0.5 mm"')
  .replace("compressionHeight: 34.9 mm ± 0.03", 'compressionHeight: "? 30 mm to 40 mm in steps of 0.1 mm"')
  .concat("aims: { deckClearance: 0.1 mm }\n");

/** A piston that may come up too far, and a speed that is too high for the stroke. */
const failing = small
  .replace("34.9 mm", "35.2 mm")
  .replace(/name: .*/, "name: Bench high")
  .concat("targets: { speed: 7600 rpm }\n");

async function toParts(page: Page): Promise<void> {
  const parts = page.getByRole("tab", { name: "Parts" });
  if (await parts.isVisible()) await parts.click();
}

const toFindings = (page: Page) => page.getByRole("tab", { name: "Findings" }).click();
const sizes = (page: Page) => page.getByRole("region", { name: "Sizes to be found" });
const tried = (page: Page) => page.getByRole("region", { name: "What was put in" });
const headline = (page: Page) => page.locator(".headline");

async function found(page: Page): Promise<void> {
  await sizes(page).getByRole("button", { name: "Find the sizes" }).click();
  await expect(sizes(page).getByRole("button", { name: "Find them anew" })).toBeVisible({ timeout: WORK });
}

/** Opens a finding and asks what would make it hold. */
async function ask(page: Page, title: string): Promise<void> {
  await page.locator("details.finding > summary", { hasText: title }).click();
  await page.getByRole("button", { name: `What would make it hold? ${title}` }).click();
  await expect(page.getByRole("button", { name: `Look again: ${title}` })).toBeVisible({ timeout: WORK });
}

test("a size marked as wanted is found, taken, and comes back with undo", async ({ page }) => {
  const complaints = complaintsOf(page);
  await begin(page);
  await toParts(page);
  const row = page.locator("#field-piston-compressionHeight-row");
  await page.locator("details.part > summary", { hasText: "Piston" }).first().click();
  await row.locator("summary", { hasText: "more" }).first().click();
  await row.getByRole("button", { name: /to be found/ }).click();
  await row.getByLabel("Compression height: least that it may be").fill("30");
  await row.getByLabel("Compression height: most that it may be").fill("40");
  await settled(page);
  await toFindings(page);
  await expect(sizes(page).getByRole("button", { name: "Find the sizes" })).toBeDisabled();
  await sizes(page).getByRole("button", { name: "State an aim" }).click();
  const quantity = page.getByLabel("A quantity");
  await expect(quantity).toBeFocused();
  await quantity.fill("Deck clearance");
  await page.getByRole("button", { name: "Add this aim" }).click();
  await page.getByLabel("Deck clearance", { exact: true }).fill("0.1 mm");
  await settled(page);
  await page.getByRole("button", { name: "To the sizes to be found" }).click();
  const find = sizes(page).getByRole("button", { name: "Find the sizes" });
  await expect(find).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(sizes(page).getByRole("status")).toHaveText(/^Solved\./, { timeout: WORK });
  await expect(sizes(page).getByRole("button", { name: "Find them anew" })).toBeFocused();
  await expect(sizes(page).locator(".found-sizes")).toContainText("34.9 mm");
  await expect(sizes(page)).toContainText("Deck clearance: 0.100 mm wanted; 0.100 mm reached");
  await expect(sizes(page)).toContainText(/rules: \d+ hold, 0 fail, 0 open/);
  const before = (await headline(page).textContent()) ?? "";

  const take = sizes(page).getByRole("button", { name: "Take this size: Piston: compression height" });
  await take.click();
  await expect(take).toHaveText("Taken");
  await expect(take).toBeFocused();
  await expect(headline(page)).not.toHaveText(before, { timeout: WORK });
  await expect(tried(page)).toContainText("Taken: Piston: compression height 34.9 mm");
  expect(await fileOf(page)).toMatch(/compressionHeight: 34\.9 mm/);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(headline(page)).toHaveText(before, { timeout: WORK });
  expect(await fileOf(page)).toMatch(/compressionHeight: "?\? 30 mm to 40 mm/);
  await toFindings(page);
  await expect(take).toHaveText("Take this size");
  expect(complaints).toEqual([]);
});

test("where many sizes do, they are drawn and listed; an older answer is not taken", async ({ page }) => {
  await begin(page, wanted);
  await found(page);
  await expect(
    sizes(page).getByRole("img", { name: /rod length.*against|against.*rod length/ }),
  ).toBeVisible();
  const rows = sizes(page).getByRole("row");
  expect(await rows.count()).toBeGreaterThan(4);
  const row = rows.nth(1);
  const [rod, height] = await row.getByRole("cell").allTextContents();
  await row.getByRole("button", { name: /^Take these/ }).click();
  await expect(tried(page)).toContainText(`${rod}`);
  await settled(page);
  const file = await fileOf(page);
  expect(file).toContain(`length: ${rod}`);
  expect(file).toContain(`compressionHeight: ${height}`);
  await toFindings(page);
  await tried(page).getByRole("button", { name: "Take it back" }).click();
  await settled(page);
  expect(await fileOf(page)).toMatch(/length: "?\? 138 mm/);
  await toFindings(page);
  await sizes(page)
    .getByRole("button", { name: /^Take all/ })
    .click();
  await settled(page);
  expect(await fileOf(page)).not.toMatch(/\?/);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await settled(page);
  await page.getByRole("combobox", { name: "Limits", exact: true }).selectOption({ index: 1 });
  await settled(page);
  await toFindings(page);
  await expect(sizes(page)).toContainText("The build has changed since these were found");
  await expect(sizes(page).getByRole("button", { name: /^Take all/ })).toHaveAttribute(
    "aria-disabled",
    "true",
  );
});

test("aims that pull against each other are named", async ({ page }) => {
  await begin(page, wanted.replace("deckClearance: 0.1 mm", "deckClearance: 0.1 mm, squishGap: 3 mm"));
  await found(page);
  await expect(sizes(page).getByRole("status")).toContainText(
    "No solution. These aims cannot be met together: Deck clearance, Squish gap.",
  );
  await expect(sizes(page).getByRole("button", { name: /^Take/ })).toHaveCount(0);
  await expect(sizes(page)).toContainText(/not met/);
});

test("a finding holds with the change that is tried, and fails again when it is taken back", async ({
  page,
}) => {
  const complaints = complaintsOf(page);
  await begin(page, failing);
  const title = "The mean piston speed at the highest speed suits the use";
  await expect(headline(page)).toBeVisible();
  const counts = page.locator(".counts");
  await expect(counts).toContainText("1 fails");
  await ask(page, title);
  const region = page.getByRole("region", { name: `What would make it hold: ${title}` });
  await expect(region.getByRole("status")).toHaveText("achievable by this one");
  await expect(region.getByRole("listitem").first()).toContainText(/7600 rpm.*6500 rpm/);
  await expect(region).toContainText("all else as it is and kept as closely as before");
  await expect(region).toContainText("for the part’s maker and a qualified machinist");
  await expect(
    region.getByRole("link", { name: "The piston comes close enough to the deck at top dead centre" }),
  ).toBeVisible();
  await region.getByRole("button", { name: /^Try this change: Targets: highest speed/ }).click();
  await expect(tried(page)).toBeFocused();
  await expect(tried(page)).toContainText(/Tried: Targets: highest speed 6500 rpm.*holds/, { timeout: WORK });
  await expect(counts).toContainText("0 fails");
  expect(await fileOf(page)).toMatch(/speed: 6500 rpm/);
  await toFindings(page);
  await tried(page).getByRole("button", { name: "Take it back" }).click();
  await expect(counts).toContainText("1 fails", { timeout: WORK });
  await expect(tried(page)).toBeFocused();
  expect(complaints).toEqual([]);
});

test("of an open finding what would do is ranked, and what is cheaper stands first", async ({ page }) => {
  await begin(page, failing);
  const title = "The piston does not stand too far above the deck at top dead centre";
  await ask(page, title);
  const region = page.getByRole("region", { name: `What would make it hold: ${title}` });
  await expect(region.getByRole("status")).toHaveText("achievable by any of these 3");
  await expect(region).toContainText("cheaper than any change");
  await expect(region.locator(".remedies > li")).toHaveCount(3);
  // Nobody takes another block for the sake of one dimension.
  await expect(region.locator(".remedies")).not.toContainText("deck height");
  await page.getByRole("combobox", { name: "Limits", exact: true }).selectOption({ index: 1 });
  await settled(page);
  await expect(region).toContainText("The build has changed since this was found");
  await expect(region.getByRole("button", { name: /^Try this change/ }).first()).toHaveAttribute(
    "aria-disabled",
    "true",
  );
});

test("what takes long can be ended", async ({ page }) => {
  await begin(page, wanted);
  const button = sizes(page)
    .getByRole("button")
    .filter({ hasText: /Find the sizes|Stop looking/ });
  await button.click();
  await button.filter({ hasText: "Stop looking" }).click({ timeout: 5_000 });
  await expect(sizes(page).getByRole("button", { name: "Find the sizes" })).toBeFocused();
  await expect(sizes(page).locator("progress")).toHaveCount(0);
});

test("fits the width and paper, light and dark, without an accessibility violation", async ({ page }) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await begin(page, wanted.replace(/name: .*/, "name: Bench wanted"));
    await found(page);
    await expectAccessible(page, ".choosing");
    expect(await cutOnPaper(page, ".choosing", A4)).toEqual([]);
    await begin(page, failing);
    await ask(page, "The piston does not stand too far above the deck at top dead centre");
    await expectAccessible(page, ".finding .choosing");
    expect(await cutOnPaper(page, ".finding .choosing", A4)).toEqual([]);
    await page
      .getByRole("button", { name: /^Try this change/ })
      .first()
      .click();
    await expect(tried(page)).toContainText(/Tried: .*holds/, { timeout: WORK });
    await expectAccessible(page, ".tried");
  }
});
