import { expect, type Page, test } from "@playwright/test";

/** Paper and its width inside the margins of print.css (16 mm each), in CSS pixels; its size in points. */
const papers = {
  A4: { width: Math.floor(((210 - 32) / 25.4) * 96), points: [595, 842] },
  Letter: { width: Math.floor(((215.9 - 32) / 25.4) * 96), points: [612, 792] },
} as const;
const pages = [
  "/rules/rod-clears-cylinder-bottom/",
  "/rules/piston-to-bore-suits-alloy/",
  "/rules/caps-drawn-down-evenly/",
  "/quantities/compressionRatio/",
  "/quantities/rodToCylinderClearance/",
  "/guides/first-check/",
  "/guides/order-list/",
  "/guides/trial-assembly/",
  "/sources/",
  "/workbench/",
];
/** Least contrast of a text with white paper, in grey as in colour: WCAG 2.2, 1.4.3. */
const LEAST_CONTRAST = 4.5;

/** What is wrong with a page as it goes to paper. */
function faultsOnPaper(page: Page, leastContrast: number): Promise<readonly string[]> {
  return page.evaluate((least) => {
    dispatchEvent(new Event("beforeprint"));
    const shown = [...document.querySelectorAll<HTMLElement>("body *")].filter((one) =>
      one.checkVisibility(),
    );
    const name = (one: Element) => `${one.localName}.${one.getAttribute("class") ?? ""}`;
    const channel = (value: number) =>
      value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
    const contrast = (color: string) => {
      const [red = 0, green = 0, blue = 0] = (color.match(/[\d.]+/g) ?? []).map(Number);
      return 1.05 / (0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue) + 0.05);
    };
    const hasText = (one: Element) =>
      [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent!.trim() !== "");
    const faults: string[] = [];
    for (const one of shown) {
      const { right, left, width } = one.getBoundingClientRect();
      const style = getComputedStyle(one);
      const isHidden = style.clipPath !== "none" || style.position === "absolute";
      if (!isHidden && width > 0 && (right > innerWidth + 1 || left < -1)) faults.push(`${name(one)} is cut`);
      if (
        !isHidden &&
        style.overflowX !== "visible" &&
        one.scrollWidth > one.clientWidth + 1 &&
        one.clientWidth > 0
      )
        faults.push(`${name(one)} would have to scroll`);
      if (hasText(one) && contrast(style.color) < least)
        faults.push(`${name(one)} is too pale: ${style.color}`);
      if (one.matches("header, nav, form, site-search, starlight-theme-select, button"))
        faults.push(`${name(one)} is for the screen`);
    }
    const printed = [...document.querySelectorAll<HTMLElement>("a[data-printed]")];
    const list = [...document.querySelectorAll(".printed-links li")].map((item) => item.textContent ?? "");
    for (const { dataset } of printed)
      if (list[Number(dataset.printed) - 1] === undefined) faults.push(`no address ${dataset.printed}`);
    if (printed.length === 0) faults.push("no link with an address");
    if (new Set(list).size !== list.length || list.some((one) => !one.startsWith("http")))
      faults.push("the list of addresses repeats itself, or names no address");
    return faults.slice(0, 10);
  }, leastContrast);
}

for (const [format, { width, points }] of Object.entries(papers)) {
  test.describe(`on ${format}`, () => {
    for (const path of pages) {
      test(path, async ({ page }) => {
        await page.setViewportSize({ width, height: 1000 });
        // From a dark screen: paper is white all the same.
        await page.emulateMedia({ media: "print", colorScheme: "dark" });
        await page.goto(path);
        // What is still being worked out is not what somebody prints.
        await expect(page.locator('[aria-busy="true"], .workbench.busy')).toHaveCount(0, {
          timeout: 120_000,
        });
        expect(await faultsOnPaper(page, LEAST_CONTRAST)).toEqual([]);
        const pdf = (await page.pdf({ format })).toString("latin1");
        const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
        expect(boxes.length).toBeGreaterThan(0);
        for (const [, across, down] of boxes) {
          expect(Math.abs(Number(across) - points[0])).toBeLessThan(2);
          expect(Math.abs(Number(down) - points[1])).toBeLessThan(2);
        }
      });
    }
  });
}

test("a page that does not suit paper is noticed", async ({ page }) => {
  await page.setViewportSize({ width: papers.A4.width, height: 1000 });
  await page.emulateMedia({ media: "print" });
  await page.goto("/quantities/compressionRatio/");
  await page.addStyleTag({
    content:
      "h1 { width: 2000px } h2 { color: #bbb } table { overflow-x: auto; display: block; width: 50px }",
  });
  const faults = (await faultsOnPaper(page, LEAST_CONTRAST)).join("\n");
  for (const what of [/is cut/, /too pale/, /would have to scroll/]) expect(faults).toMatch(what);
});

test("on paper everything that folds is open, and no drawing takes most of a page", async ({ page }) => {
  await page.setViewportSize({ width: papers.A4.width, height: 1000 });
  await page.emulateMedia({ media: "print" });
  await page.goto("/rules/rod-clears-cylinder-bottom/");
  const folded = page.locator("main details:not([open])").and(page.locator(":not(figure *)"));
  const unfolded = await folded.count();
  expect(unfolded).toBeGreaterThan(1);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await expect(folded).toHaveCount(0);
  await expect(page.getByText("What the symbols stand for").first()).toBeVisible();
  const drawings = await page
    .locator("main svg:visible")
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  expect(drawings.length).toBeGreaterThan(2);
  // 100 mm of the 267 mm of a page of A4.
  expect(Math.max(...drawings)).toBeLessThanOrEqual((100 / 25.4) * 96 + 1);
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await expect(folded).toHaveCount(unfolded);
});

test("the findings on paper say of which build and day they are, and nothing that is for the screen", async ({
  page,
}) => {
  await page.setViewportSize({ width: papers.A4.width, height: 1000 });
  await page.emulateMedia({ media: "print" });
  await page.goto("/workbench/");
  await expect(page.locator('[aria-busy="true"], .workbench.busy')).toHaveCount(0, { timeout: 120_000 });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await expect(page.getByText(/Printed \d+ \w+ \d{4}\./)).toBeVisible();
  await expect(page.getByText("How the number comes about").first()).toBeAttached();
  for (const text of [
    /Fill in what you know/,
    /open a file of your own/,
    /first verdicts after/,
    /How the number comes/,
  ])
    await expect(page.getByText(text).locator("visible=true")).toHaveCount(0);
  await expect(page.locator("h1")).toBeHidden();
  const [name, next] = await Promise.all(
    [".workbench .name", ".workbench .whose-build"].map((one) => page.locator(one).boundingBox()),
  );
  expect(next!.y).toBeGreaterThanOrEqual(name!.y + name!.height);
});
