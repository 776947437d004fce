import { describe, expect, it } from "vitest";
import { hasFile, pageText, sitePages } from "./sitePages.ts";

interface Page {
  readonly ids: ReadonlySet<string>;
  readonly links: readonly string[];
}

function readPage(html: string): Page {
  const ids = new Set([...html.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]!));
  const links = [...html.matchAll(/<(?:a|link|script|img)\b[^>]*?\s(?:href|src)="([^"]*)"/g)].map((match) =>
    match[1]!.replaceAll("&amp;", "&"),
  );
  return { ids, links };
}

const byPath = new Map(sitePages.map((path) => [path, readPage(pageText(path))]));

/** What is wrong with a link of a page, or undefined. Addresses outside the site are not fetched. */
function fault(from: string, link: string): string | undefined {
  const url = new URL(link, `http://site${from}`);
  if (url.host !== "site" || url.protocol !== "http:") return undefined;
  const target = byPath.get(decodeURI(url.pathname));
  if (target === undefined)
    return hasFile(decodeURI(url.pathname)) ? undefined : `${from} → ${link}: no such page or file`;
  const hash = decodeURIComponent(url.hash.slice(1));
  return hash === "" || hash === "_top" || target.ids.has(hash)
    ? undefined
    : `${from} → ${link}: no such place on the page`;
}

describe("the built site", () => {
  it("has no broken link inside, to a page, a file or a place on a page", () => {
    let checked = 0;
    const faults: string[] = [];
    for (const [from, page] of byPath) {
      for (const link of new Set(page.links)) {
        checked += 1;
        const what = fault(from, link);
        if (what !== undefined) faults.push(what);
      }
    }
    expect(faults.slice(0, 20)).toEqual([]);
    expect(checked).toBeGreaterThan(10_000);
    expect(byPath.size).toBeGreaterThan(200);
  });
  it("would see one", () => expect(fault("/rules/", "/rules/no-such-rule/")).toMatch(/no such page/));
  it("asks nothing of another host, and runs no inline handler", () => {
    const outside = sitePages.flatMap((path) =>
      [
        ...pageText(path).matchAll(
          /<(?:script|img|iframe|link rel="stylesheet")[^>]*?(?:src|href)="https?:[^"]*"|\son[a-z]+="/g,
        ),
      ].map((match) => `${path}: ${match[0].slice(0, 80)}`),
    );
    expect(outside.slice(0, 10)).toEqual([]);
  });
});
