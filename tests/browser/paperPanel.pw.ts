import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Download, expect, type Page, test } from "@playwright/test";
import { begin, complaintsOf, cutOnPaper, expectAccessible, settled, small, WORK } from "./onWorkbench.ts";

test.describe.configure({ timeout: 400_000 });

const command = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));
const demo = readFileSync(new URL("../../packages/core/demo/harrow-eight.yaml", import.meta.url), "utf8");
/** Width between the margins of A4 (16 mm each) [CSS pixels]. */
const A4 = Math.floor(((210 - 32) / 25.4) * 96);

const only = {
  "order-list": "Order list",
  "trial-sheet": "Trial-assembly measurement sheet",
  "assembly-sequence": "Assembly sequence",
  "engine-record": "Specification and record",
} as const;

/** What the command writes of the small build, by the name of the file. */
function written(...more: readonly string[]): (name: string) => string {
  const folder = mkdtempSync(join(tmpdir(), "trialfit-page-papers-"));
  writeFileSync(join(folder, "build.yaml"), small);
  const out = join(folder, "out");
  const { stderr } = spawnSync(
    process.execPath,
    [
      ...[
        command,
        "papers",
        "build.yaml",
        "--out",
        out,
        "--as",
        "html,markdown,csv,json",
        "--date",
        "2026-03-14",
      ],
      ...["--only", Object.keys(only).join(","), "--revision", "A", "--units", "both", "--size", "Letter"],
      ...more,
    ],
    { cwd: folder, encoding: "utf8", timeout: 300_000 },
  );
  expect(stderr).toBe("");
  return (name) => readFileSync(join(out, name), "utf8");
}

/** Asks for these papers as the command was asked for them. */
async function order(page: Page, titles: readonly string[]): Promise<void> {
  await page.getByRole("tab", { name: "Papers" }).click();
  await page.getByRole("button", { name: "None", exact: true }).click();
  for (const title of titles) await page.getByRole("checkbox", { name: title, exact: true }).check();
  await page.getByRole("combobox", { name: "Numbers" }).selectOption("both");
  await page.getByRole("combobox", { name: "Paper", exact: true }).selectOption("Letter");
  await page.getByLabel("Revision").fill("A");
  await page.getByLabel("Day", { exact: true }).fill("2026-03-14");
  await page.getByRole("button", { name: /^Write (the papers|anew)$/ }).click();
}

/** The papers are written, and nothing newer is on its way. */
async function there(page: Page): Promise<void> {
  await expect(page.getByRole("heading", { name: "Written", exact: true })).toBeVisible({ timeout: WORK });
  await expect(page.locator(".papers .progress")).toHaveCount(0, { timeout: WORK });
}

async function saved(page: Page, button: string): Promise<readonly [name: string, text: string]> {
  const [file] = await Promise.all([
    page.waitForEvent("download") as Promise<Download>,
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  return [file.suggestedFilename(), readFileSync((await file.path())!, "utf8")];
}

test("saves the documents that the command writes; what is held passes with a name and a reason", async ({
  page,
}) => {
  const complaints = complaintsOf(page);
  await begin(page);
  await order(page, Object.values(only));
  await there(page);
  const command = written();
  const files = [
    await saved(page, "Save as HTML: all papers"),
    await saved(page, "Save as CSV to fill in: Trial-assembly measurement sheet"),
    await saved(page, "Save the record as JSON: Specification and record"),
  ];
  for (const title of Object.values(only)) files.push(await saved(page, `Save as Markdown: ${title}`));
  expect(files.map(([name]) => name)).toEqual([
    "papers.html",
    "trial-sheet.csv",
    "engine-record.json",
    ...Object.keys(only).map((id) => `${id}.md`),
  ]);
  for (const [name, text] of files) expect(text, name).toBe(command(name));

  const paper = page.locator(".paper", { has: page.getByRole("heading", { name: "Assembly sequence" }) });
  await expect(paper).toContainText("Held. It waits for:");
  await expect(paper).toContainText("measure Block: finished bore");
  await paper.locator("summary", { hasText: "Let it pass all the same" }).click();
  const pass = paper.getByRole("button", { name: "Let it pass" });
  await paper.getByLabel("Who lets it pass").fill("J. B.");
  await expect(pass).toBeDisabled();
  await paper.getByLabel("Why").fill("to see it");
  await pass.click();
  await expect(paper).toContainText("Let pass by J. B.: to see it", { timeout: WORK });
  await there(page);
  const [, passed] = await saved(page, "Save as HTML: all papers");
  expect(passed).toBe(written("--pass", "assembly-sequence: J. B.: to see it")("papers.html"));
  expect(passed).toContain("<strong>Let pass by J. B.:</strong> to see it");
  expect(complaints).toEqual([]);
});

test("opens and prints a paper as a document of its own", async ({ page, context }) => {
  const complaints = complaintsOf(page);
  await context.addInitScript(() => {
    window.print = () => {
      (top as Window & { printed?: string }).printed = document.title;
    };
  });
  await begin(page);
  await order(page, ["Order list", "Operating limits"]);
  await there(page);
  await page.getByRole("button", { name: "Print: Order list" }).click();
  const printed = () => page.evaluate(() => (window as Window & { printed?: string }).printed);
  await expect.poll(printed, { timeout: WORK }).toBe("Order list: Bench four");
  const [opened] = await Promise.all([
    context.waitForEvent("page"),
    page.getByRole("button", { name: "Open all papers" }).click(),
  ]);
  await expect(opened.getByRole("heading", { name: "Operating limits" })).toBeVisible({ timeout: WORK });
  const pdf = (await opened.pdf({ preferCSSPageSize: true })).toString("latin1");
  const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/g)];
  expect(boxes.length).toBeGreaterThan(1);
  for (const [, wide, high] of boxes) expect([wide, high].map(Number)).toEqual([612, 792]);
  expect(complaints).toEqual([]);
});

test("stays usable while papers are written, and a newer order ends an older one", async ({ page }) => {
  await begin(page, demo);
  await page.getByRole("tab", { name: "Papers" }).click();
  await page.getByRole("button", { name: "Write the papers" }).click();
  await expect(page.locator(".papers .progress")).toContainText(/between which sizes each.*: \d+ of \d+/, {
    timeout: WORK,
  });
  await page.getByRole("tab", { name: "File" }).click();
  await expect(page.getByLabel("The build file, as it will be saved")).toHaveValue(/Harrow Eight/);
  await page.getByRole("tab", { name: "Papers" }).click();
  await expect(page.locator(".papers .progress")).toBeVisible();
  await order(page, ["Balance card"]);
  await there(page);
  await expect(page.locator(".written-papers .paper h4")).toHaveText(["Balance card"]);
  await page.getByRole("combobox", { name: "Limits", exact: true }).selectOption({ index: 1 });
  await expect(page.getByText("The build has changed since these were written")).toBeVisible();
  await settled(page);
});

test("the keyboard is enough", async ({ page }) => {
  await begin(page);
  await page.getByRole("tab", { name: "Findings" }).focus();
  for (let moves = 0; moves < 4; moves += 1) await page.keyboard.press("ArrowRight");
  await expect(page.getByRole("tab", { name: "Papers" })).toBeFocused();
  await page.getByRole("button", { name: "None", exact: true }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Write the papers" })).toBeDisabled();
  await page.keyboard.press("Tab");
  await expect(page.getByRole("checkbox", { name: "Proposal" })).toBeFocused();
  await page.keyboard.press("Space");
  await page.getByLabel("Revision").focus();
  await page.keyboard.press("Enter");
  await there(page);
  await expect(page.locator(".written-papers .paper h4")).toHaveText(["Proposal"]);
});

test("fits the width and paper, light and dark, without an accessibility violation", async ({ page }) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await begin(page);
    await order(page, Object.values(only));
    await there(page);
    await page.locator("summary", { hasText: /lines held/ }).click();
    await page.locator("summary", { hasText: "Let it pass all the same" }).first().click();
    await expect(page.getByLabel("Who lets it pass").first()).toBeVisible();
    await expectAccessible(page, ".papers");
    expect(await cutOnPaper(page, ".papers", A4)).toEqual([]);
  }
});
