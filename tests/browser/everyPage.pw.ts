import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, type Page, test } from "@playwright/test";
import { ruleFiles } from "@trialfit/rules";
import type { AxeResults, RunOptions } from "axe-core";
import { quantities } from "trialfit";
import { pageText, sitePages } from "../site/sitePages.ts";

/** Every page is visited once; parts run beside each other, each through its share of all kinds of pages. */
const PARTS = 8;
/** Parts that a test run visits: every page takes minutes, so all of them only when asked for. */
const VISITED = process.env.TRIALFIT_PAGES === "all" ? PARTS : 2;
/** What the page "Every page" lists, in its order. */
const lists = pageText("/pages/").match(/<ul class="plain-list pages">.*?<\/ul>/gs) ?? [];
const listed = lists.flatMap((list) => [...list.matchAll(/<a href="([^"]*)"/g)].map((match) => match[1]!));
const axeScript = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What the page says of itself, in the page. */
declare global {
  var axe: { run(context: object, options: RunOptions): Promise<AxeResults> };
  var refused: string[];
}

/** Every accessibility violation. The search button's shortcut label is the theme's own. */
function violationsOf(page: Page): Promise<readonly string[]> {
  return page.evaluate(async () => {
    const { violations } = await globalThis.axe.run(
      { exclude: [["site-search"]] },
      { resultTypes: ["violations"] },
    );
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`);
  });
}

/**
 * What is wrong with a page.
 * @param whole whether the navigation is looked at too: 800 links, alike on every page
 */
async function faultsOf(page: Page, path: string, whole: boolean): Promise<readonly string[]> {
  await page.goto(path);
  const { headings, wide, refused } = await page.evaluate(() => ({
    headings: document.querySelectorAll("h1").length,
    wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    refused: globalThis.refused,
  }));
  if (!whole) await page.evaluate(() => document.querySelector("nav.sidebar")?.remove());
  await page.evaluate(axeScript);
  return [
    ...(headings === 1 ? [] : [`${headings} headings of the first order`]),
    ...(wide > 0 ? [`${wide} px too wide`] : []),
    ...refused.map((what) => `refused by the policy: ${what}`),
    ...(await violationsOf(page)),
  ];
}

test("the page that lists every page has every file that was built, once, and counts them", async ({
  page,
}) => {
  expect([...listed].sort()).toEqual([...sitePages]);
  await page.goto("/");
  await page.getByRole("link", { name: "Every page" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Every page" })).toBeVisible();
  await expect(page.getByText(`${sitePages.length} pages`, { exact: true })).toBeVisible();
  const rules = page.getByRole("heading", { level: 2, name: /^Rule/ });
  // The rules, and the page of all of them.
  await expect(rules).toContainText(`(${ruleFiles.length + 1})`);
});

test.describe("every page of the site: accessible, within its policy, asking nothing of another host", () => {
  test.describe.configure({ mode: "parallel", timeout: 1_800_000 });
  for (let part = 0; part < VISITED; part += 1) {
    test(`part ${part + 1} of ${PARTS}`, async ({ page, baseURL }) => {
      const share = listed.filter((_, index) => index % PARTS === part);
      const faults: string[] = [];
      let path = "";
      const note = (what: string) => faults.push(`${path}: ${what}`);
      page.on("pageerror", (error) => note(error.message));
      page.on("console", (message) => message.type() === "error" && note(message.text()));
      page.on("request", (request) => {
        const { origin, protocol } = new URL(request.url());
        if (origin !== baseURL && protocol !== "data:") note(`asked ${request.url()}`);
      });
      await page.addInitScript(() => {
        globalThis.refused = [];
        document.addEventListener("securitypolicyviolation", (event) =>
          globalThis.refused.push(`${event.violatedDirective} ${event.blockedURI}`),
        );
      });
      await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
      let seen = 0;
      for (path of share) {
        for (const fault of await faultsOf(page, path, seen === 0)) note(fault);
        seen += 1;
      }
      expect(faults).toEqual([]);
      expect(seen).toBe(share.length);
      expect(seen * (PARTS + 1)).toBeGreaterThan(ruleFiles.length + quantities.size);
    });
  }
});

test("a page that breaks its policy is noticed", async ({ page }) => {
  await page.goto("/rules/");
  const refused = await page.evaluate(async () => {
    const seen: string[] = [];
    document.addEventListener("securitypolicyviolation", (event) => seen.push(event.violatedDirective));
    const script = document.createElement("script");
    script.textContent = "globalThis.broken = true";
    document.head.append(script);
    const image = new Image();
    image.src = "http://localhost:1/x.png";
    // Later, for the browser lets a debugger's own call generate code whatever the policy says.
    const generated = await new Promise((resolve) =>
      setTimeout(() => {
        try {
          resolve(new Function("return 1")());
        } catch {
          resolve("refused");
        }
      }, 300),
    );
    await new Promise((resolve) => setTimeout(resolve, 300));
    return { seen, generated, broken: "broken" in globalThis };
  });
  expect(refused.generated).toBe("refused");
  expect(refused.broken).toBe(false);
  expect(new Set(refused.seen)).toEqual(new Set(["script-src-elem", "img-src", "script-src"]));
});
