import { readFileSync } from "node:fs";
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

const demo = (name: string) =>
  readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");

test.describe.configure({ timeout: 240_000 });

const panel = (page: Page) => page.getByRole("tabpanel", { name: "Compare" });
const table = (page: Page) => panel(page).getByRole("table");
const row = (page: Page, name: string | RegExp) =>
  table(page)
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name }) });
const toCompare = (page: Page) => page.getByRole("tab", { name: "Compare" }).click();

/** Both are compared as they are now. */
async function compared(page: Page) {
  await settled(page);
  await expect(panel(page).getByText("Both are compared as they are now.")).toBeAttached({ timeout: WORK });
}

/** Types a size and comes back to what it does. */
async function type(page: Page, part: string, label: string, size: string) {
  const parts = page.getByRole("tab", { name: "Parts" });
  if (await parts.isVisible()) await parts.click();
  const heading = page.getByRole("heading", { name: part, exact: true });
  const details = page.locator("details.part", { has: heading });
  if ((await details.getAttribute("open")) === null) await details.locator("> summary").click();
  await page.getByLabel(label, { exact: true }).fill(size);
  await toCompare(page);
  await compared(page);
}

test("a kept state stands beside the build, and the table follows what is typed", async ({ page }) => {
  await begin(page);
  await toCompare(page);
  await page.getByRole("button", { name: "Keep it as it is now" }).click();
  await compared(page);
  await expect(table(page)).toContainText("All that was entered is the same.");
  await expect(table(page)).toContainText("Every rule says the same of both.");
  await type(page, "Crankshaft", "Stroke", "94");
  const stroke = row(page, "Crankshaft: stroke").first();
  await expect(stroke.getByRole("cell")).toContainText(["94 mm ± 0.02", "92 mm ± 0.02", "2 mm more"]);
  const finding = row(page, /^The piston does not stand out|does not touch|deck/i).first();
  await expect(finding).toBeVisible();
  const verdict = table(page)
    .getByRole("row")
    .filter({ has: page.locator("td .badge") })
    .first();
  await expect(verdict.locator("td .badge")).toHaveCount(2);
  await expect(verdict.getByRole("button", { name: "Crankshaft: stroke" }).first()).toBeVisible();
  await expect(row(page, "Deck clearance").getByRole("cell").last()).toContainText("−1.000 mm");
  await type(page, "Crankshaft", "Stroke", "95");
  await expect(stroke.getByRole("cell")).toContainText(["95 mm ± 0.02", "92 mm ± 0.02", "3 mm more"]);
  await page.getByRole("button", { name: "Stop comparing" }).click();
  await expect(table(page)).toHaveCount(0);
});

test("a demo stands beside it; swapped they change places, and undo takes that back whole", async ({
  page,
}) => {
  const complaints = complaintsOf(page);
  await begin(page);
  await toCompare(page);
  await page
    .getByRole("combobox", { name: "Beside this build" })
    .selectOption({ label: "Harrow Eight, V8 for circuit racing (invented)" });
  await compared(page);
  const heads = () => table(page).locator("thead").textContent();
  expect(await heads()).toMatch(/This build\s*Bench four\s*The other, a demo, invented\s*Harrow/);
  const counts = (await page.locator(".workbench .counts").textContent())!.replace(/\s+/g, " ");
  const fails = row(page, "fails").getByRole("cell");
  await expect(fails.first()).toContainText(/(\d+) fails/.exec(counts)![1]!);
  await page.getByRole("button", { name: "Swap" }).click();
  await compared(page);
  await expect(page.locator(".workbench .name")).toHaveText(/Harrow/);
  expect(await heads()).toMatch(/This build\s*Harrow.*The other, from the bench\s*Bench four/s);
  await page.getByRole("button", { name: "Undo" }).click();
  await compared(page);
  await expect(page.locator(".workbench .name")).toHaveText("Bench four");
  expect(await heads()).toMatch(/This build\s*Bench four\s*The other, a demo, invented\s*Harrow/);
  await page.getByRole("button", { name: "Redo" }).click();
  await compared(page);
  expect(await heads()).toMatch(/This build\s*Harrow.*Bench four/s);
  expect(await fileOf(page)).toBe(demo("harrow-eight"));
  expect(complaints).toEqual([]);
});

test("a file or a pasted text stands beside it; what cannot be read is said", async ({ page }) => {
  await begin(page);
  await toCompare(page);
  const other = small.replace("Bench four", "Filed four").replace("86 mm ± 0.01", "87 mm ± 0.01");
  await page
    .getByLabel("Compare with a file…")
    .setInputFiles({ name: "other.yaml", mimeType: "application/yaml", buffer: Buffer.from(other) });
  await compared(page);
  await expect(table(page).getByRole("columnheader", { name: /Filed four/ })).toContainText("other.yaml");
  await expect(row(page, "Block: finished bore").getByRole("cell")).toContainText([
    "86 mm ± 0.01",
    "87 mm ± 0.01",
    "1 mm less",
  ]);
  await panel(page).getByText("Paste a build").click();
  const box = page.getByLabel("The text of the other build file");
  await box.fill(other.replace("Filed", "Pasted").replace("87 mm", "870 mm"));
  await page.getByRole("button", { name: "Compare with this text" }).click();
  await compared(page);
  await expect(panel(page)).toContainText(/Left out of the other build: .*bore/i);
  await box.fill("trialfit: [");
  await page.getByRole("button", { name: "Compare with this text" }).click();
  await expect(page.getByRole("heading", { name: "The other build cannot be read" })).toBeVisible({
    timeout: WORK,
  });
});

test("both mechanisms stand to one scale at one angle", async ({ page }) => {
  await begin(page, demo("larkspur-hill"));
  await toCompare(page);
  await page
    .getByRole("combobox", { name: "Beside this build" })
    .selectOption({ label: "Harrow Eight, V8 for circuit racing (invented)" });
  await compared(page);
  const pictures = page.getByRole("region", { name: "Both to the same scale" }).getByRole("img");
  await expect(pictures).toHaveCount(2, { timeout: WORK });
  await page.getByLabel(/^Crank angle after firing top dead centre, of both/).fill("38");
  for (const picture of await pictures.all())
    await expect(picture).toHaveAttribute("aria-label", /38°/, { timeout: WORK });
  const [first, second] = await pictures.evaluateAll((all) =>
    all.map((one) => ({
      drawn: one.querySelector("g")!.getAttribute("transform"),
      box: one.getBoundingClientRect().toJSON() as DOMRect,
    })),
  );
  expect(first!.drawn).toBe(second!.drawn);
  expect(Math.abs(first!.box.width - second!.box.width)).toBeLessThan(1);
  // Beside each other where there is room, one below the other on a phone.
  const beside = Math.abs(first!.box.top - second!.box.top) < 2;
  expect(beside).toBe(page.viewportSize()!.width > 640);
});

test("fits the width and the paper, reads by keyboard, light and dark, without a violation", async ({
  page,
}) => {
  await begin(page, demo("larkspur-hill"));
  await toCompare(page);
  await page
    .getByRole("combobox", { name: "Beside this build" })
    .selectOption({ label: "Harrow Eight, V8 for circuit racing (invented)" });
  await compared(page);
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await expectAccessible(page, ".comparing");
  }
  const all = panel(page).getByRole("button", { name: /^Show all \d+\s+of: Sizes and words/ });
  const rows = await table(page).getByRole("row").count();
  await all.focus();
  await page.keyboard.press("Enter");
  await expect(panel(page).getByRole("button", { name: /^Show the first 12\s+of: Sizes/ })).toBeFocused();
  expect(await table(page).getByRole("row").count()).toBeGreaterThan(rows + 100);
  // A cell says whose it is where the heads of the columns are out of sight.
  const whose = table(page).locator(".whose").first();
  expect(await whose.isVisible()).toBe(page.viewportSize()!.width <= 640);
  await page.keyboard.press("Enter");
  // A4 without its margins, at 96 to the inch.
  expect(await cutOnPaper(page, ".comparing", 672)).toEqual([]);
  await page.emulateMedia({ media: "print" });
  await expect(page.getByRole("button", { name: "Swap" })).toBeHidden();
  await expect(row(page, /rod/i).first()).toBeVisible();
  await page.emulateMedia({ media: "screen" });
  await row(page, /: /).first().getByRole("button").first().click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.matches("input, select, textarea")))
    .toBe(true);
});
