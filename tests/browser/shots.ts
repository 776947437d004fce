import { chromium } from "@playwright/test";
import { chromiumPath } from "./chromium.ts";

const base = process.argv[2] ?? "http://localhost:4391";
const list = (process.argv[3] ?? "/rules/rod-clears-cylinder-bottom/").split(",");
const browser = await chromium.launch({
  executablePath: await chromiumPath(),
  args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
});
for (const [name, width, scheme] of [
  ["phone", 390, "dark"],
  ["desktop", 1440, "light"],
] as const) {
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme: scheme });
  page.on("console", (m) => m.type() === "error" && console.log("console", m.text()));
  page.on("pageerror", (e) => console.log("pageerror", e.message));
  for (const path of list) {
    await page.goto(base + path, { waitUntil: "networkidle" });
    const file = `/tmp/shots/${name}${path.replace(/[^a-z]+/g, "_")}.png`;
    await page.screenshot({ path: file, fullPage: true });
    console.log(
      file,
      await page.evaluate(() => [
        document.documentElement.scrollWidth,
        document.documentElement.clientWidth,
        document.documentElement.scrollHeight,
      ]),
    );
  }
}
await browser.close();
