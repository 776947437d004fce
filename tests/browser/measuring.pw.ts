import { expect, type Locator, type Page, test } from "@playwright/test";
import {
  begin,
  complaintsOf,
  cutOnPaper,
  expectAccessible,
  fileOf,
  keptTexts,
  settled,
  small,
  WORK,
} from "./onWorkbench.ts";

test.describe.configure({ timeout: 300_000 });

/** The least size of what a thumb must hit [CSS pixels]. */
const THUMB = 44;
/** Width between the margins of A4 (16 mm each) [CSS pixels]. */
const A4 = Math.floor(((210 - 32) / 25.4) * 96);

/** Opens the measuring form at a dimension. */
async function measure(page: Page, dimension: string): Promise<Locator> {
  await page.getByRole("tab", { name: "Measure" }).click();
  const details = page.locator("details.measured", { has: page.getByText(dimension, { exact: true }) });
  await expect(details).toBeVisible({ timeout: WORK });
  if ((await details.getAttribute("open")) === null) await details.locator("> summary").click();
  await expect(details.locator(".reading-box").first()).toBeVisible();
  return details;
}

const box = (page: Page, place: string) => page.getByLabel(place, { exact: true });

/** How many readings were taken, as the form counts them. */
const taken = (page: Page) => page.locator(".read-so-far");

async function given(page: Page): Promise<void> {
  await page.getByLabel("Who measures").fill("A. N.");
  await page.getByLabel("Part temperature, °C").fill("20,5");
  await page.getByLabel("State of the joints").fill("torque plate");
  await page.getByLabel("Instrument for mm").fill("dial bore gauge");
  await page.getByLabel("Uncertainty ±, mm").fill("0.003");
}

test("readings go from box to box into the file, with what was given once", async ({ page }) => {
  const complaints = complaintsOf(page);
  await begin(page);
  const bore = await measure(page, "Finished bore");
  await expect(bore.locator(".predicted")).toContainText("Predicted 86.000 mm.", { timeout: WORK });
  await expect(bore.locator(".reading-box")).toHaveCount(24);
  await given(page);
  const first = box(page, "cylinder 1, top, along");
  await expect(first).toHaveAttribute("inputmode", "decimal");
  for (const one of [first, page.getByLabel("Who measures"), bore.locator("> summary")])
    expect((await one.boundingBox())!.height).toBeGreaterThanOrEqual(THUMB);
  await first.fill("86.004");
  await first.press("Enter");
  await expect(box(page, "cylinder 1, top, across")).toBeFocused();
  await page.keyboard.type("86,010");
  await page.keyboard.press("Enter");
  await expect(taken(page)).toHaveText(/^2 of \d+ readings taken\.$/, { timeout: WORK });
  await expect(box(page, "cylinder 1, top, across")).toHaveValue("86.010");
  await expect(bore.locator(".place.read .rules").first()).toBeVisible({ timeout: WORK });
  await expect
    .poll(() => fileOf(page), { timeout: WORK })
    .toMatch(
      /instrument: dial bore gauge,\s+uncertainty: 0\.003 mm,\s+temperature: 20\.5 degC,\s+joint: torque plate,\s+by: A\. N\.,[\s\S]*top: \{ along: 86\.004 mm, across: 86\.010 mm \}/,
    );
  await page.getByRole("button", { name: "Undo" }).click();
  await measure(page, "Finished bore");
  await expect(taken(page)).toHaveText(/^1 of /, { timeout: WORK });
  await expect(box(page, "cylinder 1, top, across")).toHaveValue("");
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(taken(page)).toHaveText(/^2 of /, { timeout: WORK });
  await page.reload();
  await settled(page);
  await measure(page, "Finished bore");
  await expect(box(page, "cylinder 1, top, along")).toHaveValue("86.004");
  await expect(page.getByLabel("Who measures")).toHaveValue("A. N.");
  await expect(page.getByLabel("Instrument for mm")).toHaveValue("dial bore gauge");
  expect(complaints).toEqual([]);
});

test("a reading is held to its limits, and the verdicts follow it", async ({ page }) => {
  const steel = small.replace("144 mm ± 0.02 }", "144 mm ± 0.02, material: steel }");
  await begin(page, `${steel}cylinderHead: { squish: yes }\n`);
  const height = await measure(page, "Compression height");
  const told = height.locator(".predicted");
  await expect(told).toContainText(/up to \d+\.\d+ mm \(/, { timeout: WORK });
  const most = Number(/up to ([\d.]+) mm/.exec((await told.textContent())!)![1]);
  await box(page, "cylinder 1").fill((most - 0.01).toFixed(3));
  await box(page, "cylinder 2").fill((most + 0.02).toFixed(3));
  await box(page, "cylinder 2").press("Enter");
  const places = height.locator(".place");
  await expect(places.nth(0).locator(".good")).toHaveText("within the limits", { timeout: WORK });
  await expect(places.nth(1).locator(".bad")).toContainText("over the highest");
  await settled(page);
  await expect(height.locator(".rules-on")).toContainText("holds");
});

test("a slip is refused with what is predicted, and nothing measured is overwritten", async ({ page }) => {
  await begin(page);
  const bore = await measure(page, "Finished bore");
  const first = box(page, "cylinder 1, top, along");
  const place = bore.locator(".place").first();
  const before = await keptTexts(page);
  await first.fill("860.04");
  await first.press("Enter");
  await expect(place).toContainText("a decimal point one place off; expected near 86 mm", { timeout: WORK });
  await expect(first).toHaveAttribute("aria-invalid", "true");
  await expect(taken(page)).toHaveText(/^0 of /);
  expect(await keptTexts(page)).toEqual(before);
  await first.fill("86.004");
  await first.press("Enter");
  await expect(taken(page)).toHaveText(/^1 of /, { timeout: WORK });
  await expect(first).toHaveAttribute("aria-invalid", "false");
  await first.fill("86.001");
  await first.press("Enter");
  await expect(place).toContainText("86.004 mm was measured before", { timeout: WORK });
  await place.getByRole("button", { name: "Leave it" }).click();
  await expect(first).toHaveValue("86.004");
  await first.fill("86.001");
  await first.press("Enter");
  await place.getByLabel("Why it takes the place of 86.004 mm").fill("the gauge was cold");
  await place.getByRole("button", { name: "Take it" }).click();
  await expect(place.locator(".why")).toHaveCount(0, { timeout: WORK });
  await expect(first).toHaveValue("86.001");
  // The place is at rest before the file has it.
  await expect.poll(() => fileOf(page), { timeout: WORK }).toContain("along: 86.001 mm");
  expect(await fileOf(page)).toMatch(/was: "?1, top, along: 86\.004 mm"?,\s+because: the gauge was cold/);
});

test("a filled sheet is taken in, chosen or dropped on the page", async ({ page }) => {
  await begin(page);
  await measure(page, "Finished bore");
  const sheet = (...rows: readonly string[]) =>
    ["entry,position,height,direction,unit,reading", ...rows].join("\n");
  const text = sheet("block.bore,1,top,along,mm,86.004", "block.bore,2,top,along,mm,8.6004");
  await page
    .getByLabel("Take in a filled sheet (CSV)…")
    .setInputFiles({ name: "filled.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  const told = page.locator(".sheet-drop");
  await expect(told).toContainText("filled.csv: 1 readings taken, 0 known before, 1 refused.", {
    timeout: WORK,
  });
  await expect(told).toContainText("filled.csv:3:1: reading: found 8.6004 mm, a tenth of the prediction");
  await page.getByRole("tab", { name: "Findings" }).click();
  const dropped = await page.evaluateHandle(
    (csv) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([csv], "dropped.csv", { type: "text/csv" }));
      return transfer;
    },
    sheet("block.bore,1,top,along,mm,86.004", "block.bore,3,top,along,mm,86.006"),
  );
  await page.dispatchEvent("body", "drop", { dataTransfer: dropped });
  await expect(told).toContainText("dropped.csv: 1 readings taken, 1 known before, 0 refused.", {
    timeout: WORK,
  });
  await expect(taken(page)).toHaveText(/^2 of /, { timeout: WORK });
});

test("the keyboard is enough, a word carries the sign, and the unit is chosen once", async ({ page }) => {
  await begin(page);
  const tab = page.getByRole("tab", { name: "Findings" });
  await tab.focus();
  for (let moves = 0; moves < 3; moves += 1) await page.keyboard.press("ArrowRight");
  await expect(page.getByRole("tab", { name: "Measure" })).toBeFocused();
  const crown = page.locator("details.measured", { has: page.getByText("Crown volume", { exact: true }) });
  await expect(crown).toBeVisible({ timeout: WORK });
  await crown.locator("> summary").focus();
  await page.keyboard.press("Enter");
  const first = box(page, "cylinder 1");
  await expect(first).toBeVisible();
  await first.focus();
  await page.keyboard.type("3.1");
  await page.keyboard.press("Enter");
  await expect(taken(page)).toHaveText(/^1 of /, { timeout: WORK });
  await expect(page.getByLabel("cylinder 1: which way")).toHaveValue("dish");
  await page.getByLabel("Units").selectOption("inch");
  await expect(crown.locator(".unit").first()).toHaveText("in3", { timeout: WORK });
  await expect(first).toHaveValue("3.1 cm3");
  await expect.poll(() => fileOf(page), { timeout: WORK }).toContain("3.1 cm3 dish");
});

test("fits the width and paper, light and dark, without an accessibility violation", async ({ page }) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await begin(page);
    const bore = await measure(page, "Finished bore");
    await expect(bore.locator(".predicted")).not.toContainText("worked out", { timeout: WORK });
    const first = box(page, "cylinder 1, top, along");
    await first.fill("860");
    await first.press("Enter");
    await expect(bore.locator(".place").first()).toContainText("Not taken", { timeout: WORK });
    await expectAccessible(page, ".measuring");
    expect(await cutOnPaper(page, ".measuring", A4)).toEqual([]);
  }
});
