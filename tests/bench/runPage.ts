// Times how soon the workbench shows verdicts after a keystroke, in a real browser: `npm run bench:page`. Times are the
// page's own, from the keystroke to the verdicts in the document: reading, judging, laying out and drawing.
import { spawn } from "node:child_process";
import { loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { chromium, type Page } from "@playwright/test";
import { chromiumPath } from "../browser/chromium.ts";
import { median } from "./rounds.ts";
import { EVERY, sampledSizes } from "./sampledSizes.ts";

const PORT = Number(process.env.TRIALFIT_PORT ?? 4329);
const ADDRESS = `http://localhost:${PORT}`;
const RUNS = 9;
const STARTS = 3;

/** Fields to type into, from one that little rests on to those that nearly all rests on: the nth text of each. */
const typed = {
  "block.honeAngle": (n: number) => `${40 + n / 100}`,
  "piston.mass": (n: number) => `${480 + n / 10}`,
  "crankshaft.stroke": (n: number) => `${(3.622 + n / 10_000).toFixed(4)}`,
  "block.bore": (n: number) => `${(104 + n / 1_000).toFixed(3)}`,
} as const;

interface Times {
  readonly first: number;
  readonly all: number;
  /** With what would settle open verdicts. */
  readonly said: number;
}

/** The times of the verdicts that the page shows next, once all are there; from its own start, or from what was typed. */
async function verdicts(page: Page, from: "start" | "keystroke"): Promise<Times> {
  await page.waitForFunction(() => performance.getEntriesByName("all that is said").length > 0, undefined, {
    timeout: 120_000,
    polling: 50,
  });
  const measures = await page.evaluate(() =>
    performance
      .getEntriesByType("measure")
      .filter(({ name }) => /(verdicts|said)$/.test(name))
      .map(({ name, startTime, duration }) => ({ name, startTime, duration })),
  );
  const timeOf = (one: (typeof measures)[number]) =>
    from === "start" ? one.startTime + one.duration : one.duration;
  const last = measures.at(-1)!;
  const all = measures.find(({ name }) => name === "all verdicts") ?? last;
  return { first: timeOf(measures[0]!), all: timeOf(all), said: timeOf(last) };
}

/** Types into a field, as a keystroke does that completes a number. */
async function type(page: Page, path: string, text: string): Promise<Times> {
  await page.evaluate(() => performance.clearMeasures());
  await page.locator(`#field-${path.replace(".", "-")}`).evaluate((box, value) => {
    (box as HTMLInputElement).value = value;
    box.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, text);
  return verdicts(page, "keystroke");
}

/** Types another number into each of the sampled sizes that the form shows. */
async function timeSizes(page: Page): Promise<readonly Times[]> {
  const times: Times[] = [];
  for (const path of sampledSizes) {
    await page.getByLabel("Find a field").fill(path);
    const box = page.locator(`#field-${path.replace(".", "-")}`);
    if ((await box.count()) === 0) continue;
    const number = Number(await box.inputValue());
    // A size with readings, or one that is worked out from others, has no number to type.
    if (!Number.isFinite(number) || number === 0) continue;
    times.push(await type(page, path, (number * 1.00001).toPrecision(8)));
  }
  if (times.length === 0) throw new Error("found no size in the form; expected those of the demo build");
  return times;
}

/** Within which time a share of all sizes has its verdicts. */
function sharesOf(times: readonly Times[]): Record<string, object> {
  const sorted = (key: keyof Times) => times.map((one) => one[key]).sort((a, b) => a - b);
  const [first, all, said] = [sorted("first"), sorted("all"), sorted("said")];
  return Object.fromEntries(
    [0.25, 0.5, 0.75, 0.9, 1].map((share) => {
      const at = Math.min(times.length - 1, Math.floor(share * times.length));
      return [
        `${100 * share} % of them at most`,
        {
          "first verdicts [ms]": Number(first[at]!.toFixed(1)),
          "all verdicts [ms]": Number(all[at]!.toFixed(1)),
          "all that is said [ms]": Number(said[at]!.toFixed(1)),
        },
      ];
    }),
  );
}

const rows: Record<string, object> = {};
function tell(task: string, times: readonly Times[]): void {
  const of = (key: keyof Times) => times.map((one) => one[key]);
  rows[task] = {
    "first verdicts [ms]": Number(median(of("first")).toFixed(1)),
    slowest: Number(Math.max(...of("first")).toFixed(1)),
    "all verdicts [ms]": Number(median(of("all")).toFixed(1)),
    "all that is said [ms]": Number(median(of("said")).toFixed(1)),
    runs: times.length,
  };
}

const root = fileURLToPath(new URL("../..", import.meta.url));
const server = spawn("npx", ["--no-install", "astro", "preview", "--root", "site", "--port", String(PORT)], {
  cwd: root,
  stdio: ["ignore", "ignore", "inherit"],
  detached: true,
});
try {
  for (let attempt = 0; attempt < 120; attempt += 1) {
    if ((await fetch(ADDRESS).catch(() => undefined))?.ok === true) break;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  const browser = await chromium.launch({
    executablePath: await chromiumPath(),
    args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
  });
  const cold: Times[] = [];
  const open = async () => {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${ADDRESS}/workbench/`);
    cold.push(await verdicts(page, "start"));
    return page;
  };
  for (let start = 1; start < STARTS; start += 1) await (await open()).close();
  const page = await open();
  const name = await page.locator(".workbench h2.name").textContent();
  tell("a demo build, from the start of the page (first: as worked out with the site)", cold);
  for (const [path, text] of Object.entries(typed)) {
    await page.getByLabel("Find a field").fill(path);
    await type(page, path, text(0));
    const times: Times[] = [];
    for (let n = 1; n <= RUNS; n += 1) times.push(await type(page, path, text(n)));
    tell(`${path} typed anew`, times);
    const again: Times[] = [];
    for (let n = 1; n <= RUNS; n += 1) again.push(await type(page, path, text(n)));
    tell(`${path} typed as before`, again);
  }
  const sizes = await timeSizes(page);
  console.log(`${name}, ${browser.version()}, load of the machine ${loadavg()[0]!.toFixed(1)}`);
  console.table(rows);
  console.log(`${sizes.length} sizes typed anew, every ${EVERY}th of the build`);
  console.table(sharesOf(sizes));
  await browser.close();
} finally {
  if (server.exitCode === null) process.kill(-server.pid!);
}
