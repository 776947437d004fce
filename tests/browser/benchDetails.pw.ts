import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { begin, fileOf, settled, WORK } from "./onWorkbench.ts";

const demo = (name: string) =>
  readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const tables = demo("larkspur-hill");

test.describe.configure({ timeout: 240_000 });

/** Unfolds a part of the form, on a phone in its own view. */
async function unfold(page: Page, part: string) {
  const parts = page.getByRole("tab", { name: "Parts" });
  if (await parts.isVisible()) await parts.click();
  const heading = page.getByRole("heading", { name: part, exact: true });
  const details = page.locator("details.part", { has: heading });
  if ((await details.getAttribute("open")) === null) await details.locator("> summary").click();
  return details;
}

const bore = (page: Page) => page.getByLabel("Finished bore", { exact: true });

test("tables of rows keep to their field, with every part unfolded", async ({ page }) => {
  await begin(page, tables);
  for (const part of ["Crankshaft", "Connecting rod", "Camshaft"]) {
    const details = await unfold(page, part);
    await expect(details.locator(".field").first()).toBeVisible();
    const { wide, out, seen } = await page.evaluate(() => {
      const fields = [...document.querySelectorAll(".field")];
      return {
        wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        out: fields
          .flatMap((field) =>
            [...field.querySelectorAll(".scroll, .pieces, p")].map(
              (one) => one.getBoundingClientRect().right - field.getBoundingClientRect().right,
            ),
          )
          .filter((by) => by > 1),
        seen: fields.filter((field) => field.querySelector("table") !== null).length,
      };
    });
    expect(wide, part).toBeLessThanOrEqual(0);
    expect(out, part).toEqual([]);
    if (part === "Crankshaft") expect(seen).toBeGreaterThan(0);
  }
});

test("bars of the stack are as wide as they are drawn, inside of their picture", async ({ page }) => {
  await begin(page, demo("harrow-eight"));
  await page.getByRole("tab", { name: "Pictures" }).click();
  const bars = page.locator("svg.picture rect.band");
  await expect(bars.first()).toBeVisible({ timeout: WORK });
  const found = await bars.evaluateAll((all) =>
    all.map((bar) => {
      const svg = (bar as SVGRectElement).ownerSVGElement!;
      const scale = svg.getScreenCTM()!.a;
      const [box, frame] = [bar.getBoundingClientRect(), svg.getBoundingClientRect()];
      return {
        off: Math.abs(box.width / scale - Number(bar.getAttribute("width"))),
        inside: box.left >= frame.left - 1 && box.right <= frame.right + 1,
      };
    }),
  );
  expect(found.length).toBeGreaterThan(6);
  // The outline adds half a unit on either side.
  expect(found.filter(({ off, inside }) => off > 1.5 || !inside)).toEqual([]);
});

test("the picture tells the distance that the curve has at this angle, and whose it is", async ({ page }) => {
  await begin(page, demo("harrow-eight"));
  await page.getByRole("tab", { name: "Pictures" }).click();
  await page.getByRole("combobox", { name: "Marked" }).selectOption({ label: "Rod to camshaft" });
  const [picture, curve] = [page.locator(".turning figure").first(), page.locator(".turning figure").nth(1)];
  for (const angle of ["38", "142", "322"]) {
    await page.getByLabel(/^Crank angle after firing/).fill(angle);
    await expect(picture.locator("svg")).toHaveAttribute("aria-label", new RegExp(`${angle}°`), {
      timeout: WORK,
    });
    const label = (await picture.locator("svg").getAttribute("aria-label")) ?? "";
    const distance = /Rod to camshaft: (-?[\d.]+ mm)/.exec(label)![1]!;
    await expect(curve.locator("svg")).toHaveAttribute(
      "aria-label",
      new RegExp(`Rod to camshaft: [^,]*, marked [^,]*, ${distance} at the cursor`),
    );
    await expect(picture).toContainText(/Bank that leans 45° (with|against) the rotation: cylinders \d/);
  }
});

test("undo takes back one edit, also by the keys outside of a box", async ({ page }) => {
  await begin(page, tables);
  await unfold(page, "Block");
  const first = await bore(page).inputValue();
  const typed = async (size: string) => {
    await bore(page).fill(size);
    await settled(page);
    await bore(page).press("Tab");
  };
  await typed("105");
  await page.waitForTimeout(1500);
  await typed("106");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(bore(page)).toHaveValue("105");
  await page.getByRole("button", { name: "Undo" }).focus();
  await page.keyboard.press("Control+z");
  await expect(bore(page)).toHaveValue(first);
  await page.keyboard.press("Control+Shift+z");
  await expect(bore(page)).toHaveValue("105");
});

test("a pasted build is taken back by the keys", async ({ page, context }) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await begin(page, tables);
  const other = tables.replace(/^name: .*$/m, "name: Pasted four");
  await page.evaluate((text) => navigator.clipboard.writeText(text), other);
  await page.locator(".workbench .name").click();
  await page.keyboard.press("Control+v");
  await expect(page.locator(".workbench .name")).toHaveText("Pasted four", { timeout: WORK });
  await page.keyboard.press("Control+z");
  await expect(page.locator(".workbench .name")).toHaveText(/Larkspur Hill/, { timeout: WORK });
  expect(await fileOf(page)).toBe(tables);
});

test("a dimension is typed whole into the box of its number, and each piece goes to its own", async ({
  page,
}) => {
  await begin(page);
  await unfold(page, "Block");
  const unit = page.getByLabel("Finished bore: unit", { exact: true });
  const tolerance = page.getByLabel("Finished bore: tolerance, plus or minus", { exact: true });
  const type = async (text: string) => {
    await bore(page).fill(text);
    await bore(page).press("Tab");
    await settled(page);
  };
  await type("3.7 in");
  await expect(bore(page)).toHaveValue("3.7");
  await expect(unit).toHaveValue("in");
  await expect(tolerance).toHaveValue("0.000393700787");
  await type("95.5 mm +0.02/-0.01");
  await expect(bore(page)).toHaveValue("95.5");
  await expect(unit).toHaveValue("mm");
  await expect(tolerance).toHaveValue("+0.02/-0.01");
  await type("95.6 ± 0.02");
  await expect(bore(page)).toHaveValue("95.6");
  await expect(tolerance).toHaveValue("0.02");
  await expect(page.locator("#field-block-bore-trouble")).toHaveCount(0);
  await type("95.6 millimetre or so");
  const trouble = page.locator("#field-block-bore-trouble");
  await expect(trouble).toContainText(/^Block: finished bore: found .*unknown unit or word/);
  await expect(trouble).not.toContainText("block.bore");
  await expect(bore(page)).toHaveValue("95.6 millimetre or so");
  await expect(bore(page)).toHaveAttribute("aria-invalid", "true");
  await type("95.6");
  await expect(trouble).toHaveCount(0);
  await expect(unit).toHaveValue("mm");
  expect(await fileOf(page)).toContain("bore: 95.6 mm");
});

test("the page says which demo it begins with and that its data is invented, until it is changed", async ({
  page,
}) => {
  await page.goto("/workbench/");
  await settled(page);
  const whose = page.locator(".whose-build");
  await expect(page.locator(".workbench .name")).toHaveText(/^name: (.*)$/m.exec(demo("harrow-eight"))![1]!);
  await expect(whose).toContainText("A demo build: all of its data is invented.");
  await unfold(page, "Block");
  await bore(page).fill("90");
  await settled(page);
  await expect(whose).toContainText("It began as a demo build with invented data");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(whose).toContainText("A demo build: all of its data is invented.");
  await begin(page);
  await expect(whose).toHaveText("Your build, kept in this browser only.");
});
