import { chromium } from "playwright-core";
import { chromiumPath } from "./chromium.ts";

const [url, out, width = "1440", theme = "light", media = "screen", selector] = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: await chromiumPath(),
  args: ["--no-sandbox", "--headless=new"],
});
const page = await browser.newPage({
  viewport: { width: Number(width), height: 900 },
  colorScheme: theme as "light",
});
await page.addInitScript((t) => {
  localStorage.setItem("starlight-theme", t);
}, theme);
page.on("pageerror", (e) => console.log("error", e.message));
await page.goto(`${url}?t=${theme}`, { waitUntil: "load", timeout: 300000 });
await page.addStyleTag({ content: "astro-dev-toolbar{display:none}" });
if (media === "print") await page.emulateMedia({ media: "print" });
if (selector) await page.locator(selector).first().screenshot({ path: out! });
else await page.screenshot({ path: out!, fullPage: true });
console.log(
  await page.evaluate(() => {
    const small: string[] = [];
    for (const t of document.querySelectorAll("svg.picture text")) {
      const m = (t as SVGTextElement).getScreenCTM()!;
      const px = parseFloat(getComputedStyle(t).fontSize) * m.a;
      if (px < 11) small.push(`${t.textContent} ${px.toFixed(1)}`);
    }
    const out: string[] = [];
    for (const s of document.querySelectorAll("svg.picture")) {
      const b = s.getBoundingClientRect();
      for (const t of s.querySelectorAll("text")) {
        const r = t.getBoundingClientRect();
        if (
          r.left < b.left - 0.5 ||
          r.right > b.right + 0.5 ||
          r.top < b.top - 0.5 ||
          r.bottom > b.bottom + 0.5
        )
          out.push(t.textContent!);
      }
    }
    return JSON.stringify({
      pictures: document.querySelectorAll("svg.picture").length,
      small: small.slice(0, 5),
      outside: out,
      overflow: document.documentElement.scrollWidth > innerWidth,
    });
  }),
);
await browser.close();
