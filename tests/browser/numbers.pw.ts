import { readFileSync } from "node:fs";
import { expect, type Locator, type Page, test } from "@playwright/test";
import { formatNumber, Nominals, quantities, readBuildText } from "trialfit";
import { begin, complaintsOf, expectAccessible, fileOf, settled, small, WORK } from "./onWorkbench.ts";

const demo = (name: string) =>
  readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");

test.describe.configure({ timeout: 240_000 });

/** What a number of a build is, as it is printed. */
function printed(text: string, id: string): string {
  const { unit, decimals } = quantities.get(id)!;
  return formatNumber(new Nominals(readBuildText(text)).size(id)!, unit, { decimals });
}

/** Opens a finding, and in it how its number comes about. */
async function unfold(page: Page, title: string) {
  const finding = page.locator("details.finding").filter({ hasText: title }).first();
  await finding.locator("> summary").click();
  await finding.locator("details > summary", { hasText: "How the number comes about" }).click();
  return finding;
}

/** Unfolds a part of the form, on a phone in its own view. */
async function toPart(page: Page, part: string) {
  const parts = page.getByRole("tab", { name: "Parts" });
  if (await parts.isVisible()) await parts.click();
  const heading = page.getByRole("heading", { name: part, exact: true });
  const details = page.locator("details.part", { has: heading });
  if ((await details.getAttribute("open")) === null) await details.locator("> summary").click();
}

test("a finding says how its number comes about, from what was entered to what is compared", async ({
  page,
}) => {
  const complaints = complaintsOf(page);
  const text = demo("larkspur-hill");
  await begin(page, text);
  const finding = await unfold(page, "The rod clears the bottom of the cylinder through the whole turn");
  const steps = finding.getByRole("list", { name: /^Steps to: / });
  await expect(steps).toBeVisible({ timeout: WORK });
  const last = steps.locator(":scope > li").last();
  await expect(last).toContainText(printed(text, "rodToCylinderClearance"));
  // Each with a formula has it twice: in symbols, and with the numbers put in.
  const first = finding.getByRole("group", { name: /^Formula of / }).first();
  await expect(first.locator("math")).toBeVisible();
  await expect(finding.getByRole("group", { name: /with the numbers of this build$/ }).first()).toBeVisible();
  await expectAccessible(page, "details.finding .numbers");
  await page.emulateMedia({ colorScheme: "dark" });
  await expectAccessible(page, "details.finding .numbers");
  await steps.getByRole("button", { name: "Crankshaft: stroke" }).first().click();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("field-crankshaft-stroke");
  expect(complaints).toEqual([]);
});

test("the steps are about the build as it is, also after something is typed", async ({ page }) => {
  await begin(page);
  const title = "The piston does not stand too far above the deck at top dead centre";
  const last = (finding: Locator) =>
    finding.getByRole("list", { name: "Steps to: Deck clearance" }).locator(":scope > li").last();
  const finding = await unfold(page, title);
  await expect(last(finding)).toContainText(printed(small, "deckClearance"), { timeout: WORK });
  await toPart(page, "Crankshaft");
  await page.getByLabel("Stroke", { exact: true }).fill("92.04");
  await settled(page);
  // What was unfolded stays so, also when another view was looked at meanwhile.
  await page.getByRole("tab", { name: "Findings" }).click();
  const changed = small.replace("stroke: 92 mm", "stroke: 92.04 mm");
  expect(printed(changed, "deckClearance")).not.toBe(printed(small, "deckClearance"));
  await expect(last(finding)).toContainText(printed(changed, "deckClearance"), { timeout: WORK });
  expect(await fileOf(page)).toBe(changed);
});
