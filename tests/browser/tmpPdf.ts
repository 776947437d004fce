import { chromium } from "playwright-core";
import { chromiumPath } from "./chromium.ts";
const browser = await chromium.launch({ executablePath: await chromiumPath(), args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] });
const page = await browser.newPage();
for (const [html, pdf] of process.argv.slice(2).map((one) => one.split("="))) {
  await page.goto(`file://${html}`, { waitUntil: "load", timeout: 30000 });
  await page.pdf({ path: pdf, preferCSSPageSize: true, printBackground: true });
}
await browser.close();
