import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "@playwright/test";

const command = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));
const demo = (name: string) =>
  fileURLToPath(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url));
/** Width between the margins of the papers (12 mm each), in CSS pixels; a page in points. */
const sizes = {
  A4: { width: Math.floor(((210 - 24) / 25.4) * 96), points: ["595", "842"] },
  Letter: { width: Math.floor(((215.9 - 24) / 25.4) * 96), points: ["612", "792"] },
} as const;

test.describe.configure({ mode: "serial", timeout: 900_000 });

for (const [name, size, units] of [
  ["harrow-eight", "A4", "both"],
  ["larkspur-hill", "Letter", "written"],
] as const) {
  test(`papers of ${name} fit ${size}`, async ({ page }) => {
    const out = mkdtempSync(join(tmpdir(), "trialfit-papers-"));
    const pass = "torque-sheet: J. B.: to see it; assembly-sequence: J. B.: to see it";
    const { stdout, stderr, status } = spawnSync(
      process.execPath,
      [command, "papers", demo(name), "--out", out, "--size", size, "--units", units, "--pass", pass],
      { encoding: "utf8", timeout: 800_000 },
    );
    expect({ stderr, status }).toEqual({ stderr: "", status: 0 });
    expect(stdout).toContain("papers.pdf");

    const pdf = readFileSync(join(out, "papers.pdf"), "latin1");
    const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/g)];
    expect(boxes.length).toBeGreaterThan(40);
    for (const [, wide, high] of boxes)
      expect([wide, high].map((one) => String(Math.floor(Number(one))))).toEqual(
        sizes[size].points.map((one) => expect.stringMatching(new RegExp(`^${one}$|^${Number(one) - 1}$`))),
      );

    await page.setViewportSize({ width: sizes[size].width, height: 1000 });
    await page.setContent(readFileSync(join(out, "papers.html"), "utf8"));
    await page.emulateMedia({ media: "print" });
    const seen = await page.evaluate(() => {
      const all = [...document.querySelectorAll<HTMLElement>("body *")];
      const cut = all
        .filter(
          (one) =>
            one.getBoundingClientRect().right > innerWidth + 1 ||
            (one.scrollWidth > one.clientWidth + 1 &&
              one.clientWidth > 0 &&
              getComputedStyle(one).display !== "inline"),
        )
        .map((one) => `${one.localName}.${one.className}: ${one.textContent?.slice(0, 60)}`);
      const empty = [...document.querySelectorAll("td, th, h1, h2, h3, li")]
        .filter((one) => one.textContent?.trim() === "" && one.querySelector("[role=img]") === null)
        .map((one) => one.closest("section")?.querySelector("h2")?.textContent ?? one.localName);
      const small = all.filter(
        (one) =>
          [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent!.trim() !== "") &&
          Number.parseFloat(getComputedStyle(one).fontSize) < 11,
      ).length;
      const colours = new Set(
        all.flatMap((one) => [getComputedStyle(one).color, getComputedStyle(one).borderTopColor]),
      );
      return {
        cut: cut.slice(0, 10),
        empty: empty.slice(0, 10),
        small,
        colours: [...colours],
        elements: all.length,
        heads: document.querySelectorAll("header").length,
        papers: document.querySelectorAll("article").length,
      };
    });
    expect(seen.cut).toEqual([]);
    expect(seen.empty).toEqual([]);
    expect(seen.small).toBe(0);
    expect(seen.colours).toEqual(["rgb(0, 0, 0)"]);
    expect(seen.papers).toBe(12);
    expect(seen.heads).toBe(seen.papers);
    expect(seen.elements).toBeGreaterThan(3000);
  });
}
