import { expect, type Page, test } from "@playwright/test";
import { packText } from "../../site/src/workbench/state/packText.ts";
import { begin, fileOf, keptTexts, settled, small, WORK } from "./onWorkbench.ts";

test.describe.configure({ timeout: 2 * WORK });

const named = (name: string) => small.replace("Bench four", name);
const heading = (page: Page) => page.locator(".workbench .name");
const linkTo = async (text: string) => `/workbench/#build=${await packText(text)}`;

/** Changes the stroke, by the File panel: it is there at every width. */
async function change(page: Page, from: string, to: string) {
  await page.getByRole("tab", { name: "File" }).click();
  const text = page.getByLabel("The build file, as it will be saved");
  await text.fill((await text.inputValue()).replace(from, to));
  await page.getByRole("button", { name: "Use this text" }).click();
  await settled(page);
}

test("a link, whole or broken, leaves a build of one's own where it was", async ({ page, context }) => {
  await begin(page, named("Mine"));
  await change(page, "92 mm", "92.4 mm");
  const linked = await context.newPage();
  await linked.goto(await linkTo(named("Of a friend")));
  await expect(heading(linked)).toHaveText("Of a friend", { timeout: WORK });
  await settled(linked);
  await page.reload();
  await expect(heading(page)).toHaveText("Mine", { timeout: WORK });
  expect(await fileOf(page)).toContain("92.4 mm");

  const broken = await context.newPage();
  await broken.goto("/workbench/#build=AAAA");
  await expect(broken.getByRole("alert")).toContainText("does not hold a build", { timeout: WORK });
  await settled(broken);
  const texts = await keptTexts(broken);
  expect(texts.some((text) => text.includes("Mine") && text.includes("92.4 mm"))).toBe(true);
  expect(texts.some((text) => text.includes("Of a friend"))).toBe(true);
});

test("a link that is put into the address of an open workbench is opened, and the build before can be had again", async ({
  page,
}) => {
  await begin(page, named("Mine"));
  const link = await linkTo(named("Of a friend"));
  await page.evaluate((to) => {
    location.href = to;
  }, link);
  await expect(heading(page)).toHaveText("Of a friend", { timeout: WORK });
  expect(new URL(page.url()).hash).toBe("");
  await settled(page);
  await page.reload();
  await expect(heading(page)).toHaveText("Of a friend", { timeout: WORK });
  const open = page.locator(".toolbar select").first();
  const before = open.locator("option", { hasText: /^Mine, / });
  await open.selectOption(await before.getAttribute("value"));
  await expect(heading(page)).toHaveText("Mine", { timeout: WORK });

  await page.evaluate(() => {
    location.href = "#build=AAAA";
  });
  await expect(page.getByRole("alert")).toContainText("does not hold a build");
  await expect(heading(page)).toHaveText("Mine");
});

test("two tabs keep a build each", async ({ page, context }) => {
  await begin(page, named("First"));
  const second = await context.newPage();
  await begin(second, named("Second"));
  await change(page, "92 mm", "92.6 mm");
  await second.reload();
  await expect(heading(second)).toHaveText("Second", { timeout: WORK });
  await page.reload();
  await expect(heading(page)).toHaveText("First", { timeout: WORK });
  expect(await fileOf(page)).toContain("92.6 mm");
});

test("a file that is no build is refused, and the build stays", async ({ page }) => {
  await begin(page, named("Mine"));
  const choose = page.getByLabel("Open a file…");
  const picture = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
  await choose.setInputFiles({ name: "photo.png", mimeType: "image/png", buffer: picture });
  await expect(page.getByRole("alert")).toContainText("photo.png is no text");
  await choose.setInputFiles({
    name: "notes.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from("bore: 86 mm\n"),
  });
  await expect(page.getByRole("alert")).toContainText("notes.yaml is no build file");
  await expect(heading(page)).toHaveText("Mine");
  await page.reload();
  await expect(heading(page)).toHaveText("Mine", { timeout: WORK });
  // The demo that the page begins with may have been kept before the file came.
  const texts = await keptTexts(page);
  expect(texts.filter((text) => !text.includes("name: Harrow Eight"))).toEqual([named("Mine")]);
});

test("what was written in the file and not used stays while other views are looked at", async ({ page }) => {
  await begin(page, named("Mine"));
  await page.getByRole("tab", { name: "File" }).click();
  const text = page.getByLabel("The build file, as it will be saved");
  await text.fill(`${named("Mine")}# to be used later\n`);
  await page.getByRole("tab", { name: "Pictures" }).click();
  await page.getByRole("tab", { name: "File" }).click();
  await expect(text).toHaveValue(/to be used later/);
  await expect(page.getByText("This text is not used yet")).toBeVisible();
  await page.getByRole("button", { name: "Use this text" }).click();
  await expect(page.getByText("This text is not used yet")).toHaveCount(0);
  await page.getByRole("button", { name: "forget them" }).click();
  await expect(page.getByText("Forgotten.")).toBeVisible();
  expect(await keptTexts(page)).toEqual([]);
});
