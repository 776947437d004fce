import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** Longest wait for something that is worked out [ms]. */
export const WORK = 150_000;

/** A small invented build. */
export const small = `trialfit: "1"
name: Bench four
use: street
block: { layout: inline, cylinders: "4", mainBearings: "5", bore: 86 mm ± 0.01, deckHeight: 225 mm ± 0.05 }
crankshaft: { stroke: 92 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 34.9 mm ± 0.03, crownVolume: 3 cm3 dish ± 0.3 }
headGasket: { compressedThickness: 1.0 mm ± 0.05 }
`;

/** Puts a build on the workbench and waits until its verdicts are there. */
export async function begin(page: Page, text = small): Promise<void> {
  await page.goto("/workbench/");
  await page
    .getByLabel("Open a file…")
    .setInputFiles({ name: "build.yaml", mimeType: "application/yaml", buffer: Buffer.from(text) });
  const name = /^name: (.*)$/m.exec(text)![1]!;
  await expect(page.locator(".workbench .name")).toHaveText(name, { timeout: WORK });
  await settled(page);
}

/** Nothing is being worked out. */
export async function settled(page: Page): Promise<void> {
  await expect(page.locator(".workbench:not(.busy) .counts li").first()).toBeVisible({ timeout: WORK });
}

/** The builds that the browser keeps. */
export function keptTexts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    Object.entries(localStorage)
      .filter(([key]) => key.startsWith("trialfit.build."))
      .map(([, value]) => JSON.parse(value).text as string)
      .sort(),
  );
}

/** The build file as the workbench would save it. */
export async function fileOf(page: Page): Promise<string> {
  await page.getByRole("tab", { name: "File" }).click();
  return page.getByLabel("The build file, as it will be saved").inputValue();
}

/** Every message of the browser that something went wrong, as they come: violations of the policy among them. */
export function complaintsOf(page: Page): readonly string[] {
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  return complaints;
}

/** The view fits the width of the page, and axe finds nothing in it. */
export async function expectAccessible(page: Page, view: string): Promise<void> {
  const [room, used] = await page.evaluate(() => [
    document.documentElement.clientWidth,
    document.documentElement.scrollWidth,
  ]);
  expect(used).toBeLessThanOrEqual(room!);
  const { violations } = await new AxeBuilder({ page }).include(view).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
}

/** What would be cut of a view on paper of this width [CSS pixels]. */
export async function cutOnPaper(page: Page, view: string, width: number): Promise<readonly string[]> {
  const before = page.viewportSize()!;
  await page.setViewportSize({ width, height: 1000 });
  await page.emulateMedia({ media: "print" });
  const cut = await page.locator(view).evaluate((root) =>
    [...root.querySelectorAll<HTMLElement>("*")]
      .filter((one) => one.checkVisibility() && getComputedStyle(one).position !== "absolute")
      .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
      .map((one) => `${one.localName}.${one.className}`),
  );
  await page.emulateMedia({ media: "screen" });
  await page.setViewportSize(before);
  return cut;
}
