import { findBrowser } from "./findBrowser.ts";

/** What printing came to: done, or why not, in words for people. */
export type Printed = { readonly printed: true } | { readonly printed: false; readonly why: string };

const NONE =
  "no browser was found that prints to PDF (CHROMIUM_PATH may name one): open the HTML file in any browser and print it";

/**
 * Prints a page to PDF with a browser of this machine. Nothing leaves the machine: the page holds all that it shows.
 * @param html the page itself
 */
export async function printPdf(html: string, path: string): Promise<Printed> {
  const executablePath = findBrowser();
  if (executablePath === undefined) return { printed: false, why: NONE };
  const library = await import("playwright-core").catch(() => undefined);
  if (library === undefined)
    return {
      printed: false,
      why: "the library that drives a browser is not installed (npm install playwright-core)",
    };
  const root = process.getuid?.() === 0;
  const browser = await library.chromium.launch({
    executablePath,
    args: ["--disable-gpu", "--disable-dev-shm-usage", ...(root ? ["--no-sandbox"] : [])],
  });
  try {
    const page = await browser.newPage({ javaScriptEnabled: false, offline: true });
    await page.setContent(html, { waitUntil: "load" });
    await page.pdf({ path, preferCSSPageSize: true, printBackground: true });
    return { printed: true };
  } finally {
    await browser.close();
  }
}
