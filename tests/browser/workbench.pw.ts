import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { evaluate, readBuildText } from "trialfit";
import { countScripts } from "./countScripts.ts";

const demo = (name: string) =>
  readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const WORK = 120_000;

test.describe.configure({ timeout: 240_000 });

/** The first verdicts are there, with nothing still being worked out. */
async function ready(page: Page) {
  await expect(page.locator(".workbench:not(.busy) .counts li").first()).toBeVisible({ timeout: WORK });
}

async function begin(page: Page, text?: string) {
  await page.goto("/workbench/");
  if (text !== undefined)
    await page
      .getByLabel("Open a file…")
      .setInputFiles({ name: "mine.yaml", mimeType: "application/yaml", buffer: Buffer.from(text) });
  await ready(page);
}

/** Unfolds a part of the form, on a phone in its own view. */
async function unfold(page: Page, part: string) {
  const parts = page.getByRole("tab", { name: "Parts" });
  if (await parts.isVisible()) await parts.click();
  const details = page.locator("details.part", {
    has: page.getByRole("heading", { name: part, exact: true }),
  });
  if ((await details.getAttribute("open")) === null) await details.locator("> summary").click();
}

const field = (page: Page, name: string) => page.getByLabel(name, { exact: true });

const small = `trialfit: "1"
name: Bench four
use: street
block: { layout: inline, cylinders: "4", bore: 86 mm ± 0.01, deckHeight: 225 mm ± 0.05 }
crankshaft: { stroke: 92 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 34.9 mm ± 0.03 }
headGasket: { compressedThickness: 1.0 mm ± 0.05 }
`;

test("judges a demo build as the evaluator does", async ({ page }) => {
  await begin(page, demo("larkspur-hill"));
  const { summary } = await evaluate(readBuildText(demo("larkspur-hill")));
  await expect(page.getByRole("heading", { name: /Larkspur Hill/ })).toBeVisible();
  const counts = (await page.locator(".workbench .counts").textContent()) ?? "";
  for (const [count, word] of [
    [summary.fails, "fails"],
    [summary.open, "open"],
    [summary.unknown, "unknown"],
    [summary.toConfirm, "to be confirmed"],
    [summary.holds, "holds"],
  ])
    expect(counts.replace(/\s+/g, " ")).toContain(`${count} ${word}`);
  await expect(page.getByText(/^NOT SOUND/)).toBeVisible();
});

test("a size that is typed moves the verdicts, and comes back with undo", async ({ page }) => {
  await begin(page, small);
  await unfold(page, "Crankshaft");
  const before = (await page.locator(".headline").textContent()) ?? "";
  await field(page, "Stroke").fill("99");
  await expect(page.locator(".workbench:not(.busy)")).toBeVisible({ timeout: WORK });
  await expect(page.locator(".headline")).not.toHaveText(before);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(field(page, "Stroke")).toHaveValue("92");
  await expect(page.locator(".headline")).toHaveText(before, { timeout: WORK });
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(field(page, "Stroke")).toHaveValue("99");
});

test("another unit is the same size; a slip is told at its field", async ({ page }) => {
  await begin(page, small);
  await unfold(page, "Block");
  await field(page, "Finished bore: unit").selectOption("in");
  await expect(field(page, "Finished bore")).toHaveValue("3.38582677");
  await field(page, "Finished bore: unit").selectOption("mm");
  await expect(field(page, "Finished bore")).toHaveValue(/^86(\.0+\d?)?$|^85\.9999/);
  await field(page, "Finished bore").fill("860");
  const trouble = page.locator("#field-block-bore-trouble");
  await expect(trouble).toContainText("outside what this dimension can be");
  await expect(field(page, "Finished bore")).toHaveAttribute("aria-invalid", "true");
  await expect(page.getByRole("alert")).toContainText("cannot be read and is left out of every verdict");
  await field(page, "Finished bore").fill("86");
  await expect(trouble).toHaveCount(0);
});

test("readings of every cylinder are laid out, typed and written into the file", async ({ page }) => {
  await begin(page, small);
  await unfold(page, "Block");
  const row = page.locator("#field-block-bore-row");
  await row.locator("details.more > summary").click();
  await row.getByRole("button", { name: "readings for each cylinder" }).click();
  await field(page, "Finished bore: lay out rows").selectOption("directions");
  const reading = (n: number) => field(page, `Finished bore, row ${n}: reading`);
  await expect(reading(8)).toBeVisible();
  await expect(reading(9)).toHaveCount(0);
  await reading(1).fill("86.004");
  await reading(2).fill("86.010 mm");
  await reading(3).fill("86.002");
  await expect(page.locator(".workbench:not(.busy)")).toBeVisible({ timeout: WORK });
  const { violations } = await new AxeBuilder({ page }).include("#field-block-bore-row").analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
  await page.getByRole("tab", { name: "File" }).click();
  await expect(page.getByLabel("The build file, as it will be saved")).toHaveValue(
    /value: 86 mm ± 0\.01,\s+readings: \{ 1: \{ middle: \{ along: 86\.004 mm, across: 86\.010 mm \} \}, 2: \{ middle/,
  );
});

test("a size that is to be found, and what it must reach, are given in the form", async ({ page }) => {
  await begin(page, small);
  await unfold(page, "Piston");
  const row = page.locator("#field-piston-compressionHeight-row");
  await row.locator("details.more > summary").click();
  await row.getByRole("button", { name: "to be found" }).click();
  await field(page, "Compression height: least that it may be").fill("28");
  await field(page, "Compression height: most that it may be").fill("36 mm");
  await field(page, "Compression height: steps in which it can be had").fill("0.05");
  await unfold(page, "Aims");
  await page.getByLabel("A quantity").fill("Compression ratio");
  await page.getByRole("button", { name: "Add this aim" }).click();
  await field(page, "Compression ratio: how it is compared").selectOption("at least");
  await field(page, "Compression ratio").fill("10.5");
  await expect(page.locator(".workbench:not(.busy)")).toBeVisible({ timeout: WORK });
  await page.getByRole("tab", { name: "File" }).click();
  const file = page.getByLabel("The build file, as it will be saved");
  await expect(file).toHaveValue(/compressionHeight: "?\? 28 mm to 36 mm in steps of 0\.05 mm/);
  await expect(file).toHaveValue(/aims:\s+compressionRatio: at least 10\.5/);
  await unfold(page, "Aims");
  await page.getByRole("button", { name: "Compression ratio: take out this aim" }).click();
  await page.getByRole("tab", { name: "File" }).click();
  await expect(file).not.toHaveValue(/compressionRatio/);
});

test("the table of a chart stays open and in place while the crank turns", async ({ page }) => {
  await begin(page, demo("larkspur-hill"));
  await page.getByRole("tab", { name: "Pictures" }).click();
  const summary = page.locator("details.curve-table > summary");
  await expect(summary).toBeVisible({ timeout: WORK });
  await summary.click();
  const table = page.locator("details.curve-table table");
  await expect(table).toBeVisible();
  const marked = await table.evaluate((element) => element.setAttribute("data-same", "yes"));
  expect(marked).toBeUndefined();
  const before = await page.locator(".turning .drawing").first().innerHTML();
  await page.getByLabel(/^Crank angle after firing/).fill("120");
  await expect.poll(() => page.locator(".turning .drawing").first().innerHTML()).not.toBe(before);
  await expect(table).toBeVisible();
  await expect(table).toHaveAttribute("data-same", "yes");
  const rows = await table.textContent();
  await page.getByLabel("Over the cycle").selectOption({ label: "Speed of the piston" });
  await expect(table).not.toHaveText(rows ?? "");
  await expect(table).toBeVisible();
});

test("before it is touched it has asked for no more script than it says", async ({ page }) => {
  const scripts = countScripts(page);
  await begin(page);
  const sizes = new Map([...(await scripts())].filter(([url]) => !url.endsWith("/offline.js")));
  const total = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  console.log(
    `the workbench ${sizes.size} scripts, ${(total / 1000).toFixed(1)} kB compressed before it is touched`,
  );
  expect([...sizes.keys()].some((url) => /\/Bench-/.test(url))).toBe(true);
  expect(
    [...sizes.keys()].filter((url) =>
      /\/(Desk|measure|MeasuringPanel|PapersPanel|ComparePanel|OtherBuild|NumberPanel|traceNumbers)[-.]/.test(
        url,
      ),
    ),
  ).toEqual([]);
  expect(total).toBeLessThan(190_000);
});

test("fits the width, light and dark, without an accessibility violation", async ({ page }) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await begin(page, small);
    await unfold(page, "Crankshaft");
    const [room, used] = await page.evaluate(() => [
      document.documentElement.clientWidth,
      document.documentElement.scrollWidth,
    ]);
    expect(used).toBeLessThanOrEqual(room!);
    const { violations } = await new AxeBuilder({ page }).exclude("site-search").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
  }
});

test("a finding leads to the field that would settle it", async ({ page }) => {
  await begin(page, small);
  const wanted = page.locator(".needs button").first();
  const name = ((await wanted.textContent()) ?? "").replace(/ \(.*$/, "");
  await wanted.click();
  const label = () =>
    page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent ?? "");
  await expect.poll(async () => (await label()).length).toBeGreaterThan(2);
  expect(name.toLowerCase()).toContain((await label()).toLowerCase());
});

test("what a person saw is written into the file", async ({ page }) => {
  await begin(page, demo("harrow-eight"));
  await page.locator("details.section > summary", { hasText: "To be confirmed" }).click();
  const section = page.locator("details.section[open]").filter({ hasText: "To be confirmed" });
  const finding = section.locator("details.finding").last();
  await finding.locator("summary").first().click();
  await finding.getByLabel("Was it so?").selectOption("yes");
  await finding.getByLabel("Who looked").fill("A. B.");
  await finding.getByLabel("With what, and what was read").fill("seen with a lamp");
  await finding.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("tab", { name: "File" }).click();
  await expect(page.getByLabel("The build file, as it will be saved")).toHaveValue(
    /confirmations:[\s\S]*by: A\. B\./,
  );
});

test("saves the file, shares it in a link, and keeps it for the next visit", async ({ page, context }) => {
  const requests: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  await begin(page, small);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the file" }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe("bench-four.yaml");
  expect(readFileSync((await file.path())!, "utf8")).toBe(small);

  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy a link" }).click();
  await expect(page.getByText(/The link is copied/)).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const other = await (await page.context().browser()!.newContext()).newPage();
  await other.goto(link);
  await ready(other);
  await expect(other.getByRole("heading", { name: "Bench four" })).toBeVisible();
  expect(new URL(other.url()).hash).toBe("");
  await other.goto(`${new URL(link).origin}/workbench/#build=AAAA`);
  await expect(other.getByRole("alert")).toContainText("does not hold a build");
  await other.context().close();

  await page.reload();
  await ready(page);
  await expect(page.getByRole("heading", { name: "Bench four" })).toBeVisible();
  const hosts = new Set(requests.map((url) => new URL(url).host));
  expect([...hosts]).toEqual([new URL(page.url()).host]);
});

test("goes on without a network after the first visit", async ({ page, context }) => {
  await begin(page, small);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await ready(page);
  await context.setOffline(true);
  await page.reload();
  await ready(page);
  await unfold(page, "Crankshaft");
  await field(page, "Stroke").fill("91");
  await expect(page.locator(".workbench:not(.busy)")).toBeVisible({ timeout: WORK });
  await context.setOffline(false);
});

test("is worked by the keyboard alone", async ({ page }) => {
  await begin(page, small);
  await page.getByRole("tab", { name: "Findings" }).focus();
  await page.keyboard.press("ArrowRight");
  await expect(page.getByRole("tab", { selected: true })).toBeFocused();
  await expect(page.getByRole("tab", { name: "Findings" })).toHaveAttribute("aria-selected", "false");
  await page.keyboard.press("Home");
  await expect(page.getByRole("tab").first()).toHaveAttribute("aria-selected", "true");
  await page.getByLabel("Find a field").focus();
  await page.keyboard.type("stroke crankshaft");
  for (let presses = 0; presses < 12; presses += 1) {
    await page.keyboard.press("Tab");
    const label = await page.evaluate(
      () => (document.activeElement as HTMLInputElement).labels?.[0]?.textContent,
    );
    if (label === "Stroke") break;
  }
  await page.keyboard.press("Control+a");
  await page.keyboard.type("93");
  await expect(page.locator(".workbench:not(.busy)")).toBeVisible({ timeout: WORK });
  await page.getByRole("tab", { name: "File" }).click();
  await expect(page.getByLabel("The build file, as it will be saved")).toHaveValue(/stroke: 93 mm/);
});

test("a file that is none is told line by line and can be mended in place", async ({ page }) => {
  await begin(page, small);
  await page.getByRole("tab", { name: "File" }).click();
  const text = page.getByLabel("The build file, as it will be saved");
  await text.fill("trialfit: [");
  await page.getByRole("button", { name: "Use this text" }).click();
  await expect(page.getByText("The file cannot be read: see the File panel.")).toBeVisible();
  await expect(page.locator(".troubles li").first()).toContainText("line 1");
  await expect(page.locator(".standing").getByRole("alert")).toContainText("line 1");
  await expect(page.locator(".standing")).not.toContainText("left out of every verdict");
  await text.fill(small.replace("Bench four", "Mended"));
  await page.getByRole("button", { name: "Use this text" }).click();
  await expect(page.getByRole("heading", { name: "Mended" })).toBeVisible();
});

test("findings are narrowed to a verdict, on paper too, and the page says how many are left out", async ({
  page,
}) => {
  await begin(page, small);
  const findings = page.locator(".findings");
  await findings.getByLabel("Verdict").selectOption({ label: "what a person has to look at" });
  await expect(findings.getByText(/^\d+ of \d+ entries are shown, and printed\.$/)).toBeVisible();
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
  // What is assumed stays with whatever is printed; it has no verdict.
  const judged = findings.locator("details.finding", { has: page.locator("summary .badge") });
  await expect(judged.first()).toBeVisible();
  const asked = await judged.count();
  expect(asked).toBeGreaterThan(20);
  expect(await findings.locator("details.finding .confirm").count()).toBe(asked);
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await findings.getByLabel("Verdict").selectOption({ label: "what holds" });
  await expect(findings.locator("summary .badge:not(.holds)")).toHaveCount(0);
  expect(await findings.locator("summary .badge.holds").count()).toBeGreaterThan(3);
});

test("prints every finding that asks something unfolded, the others in a line", async ({ page }) => {
  await begin(page, small);
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
  await expect(page.locator(".findings details.section:not([open])")).toHaveCount(0);
  const asking = page.locator(".findings details.finding", {
    has: page.locator("summary .badge:is(.fails, .open, .unknown)"),
  });
  const [asked, told, folded] = await Promise.all([
    asking.count(),
    page.locator(".findings details.finding > .lines").count(),
    page.locator(".findings details.finding:not([open])").count(),
  ]);
  expect(asked).toBeGreaterThan(50);
  expect(told).toBe(asked);
  expect(folded).toBeGreaterThan(10);
  await expect(page.getByRole("button", { name: "Undo" })).toBeHidden();
  const pdf = await page.pdf({ format: "A4" });
  expect(pdf.length).toBeGreaterThan(20_000);
});
