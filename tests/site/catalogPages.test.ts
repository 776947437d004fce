import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ruleFiles, setFiles, sources } from "@trialfit/rules";
import { quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { dist, pageText, sitePages } from "./sitePages.ts";

/** The names of the pages that stand in a folder of the site. */
const pagesIn = (folder: string): readonly string[] =>
  sitePages.flatMap((path) => {
    const name = new RegExp(`^/${folder}/([^/]+)/$`).exec(path)?.[1];
    return name === undefined ? [] : [name];
  });
/** The names of the places of one kind of element on a page. */
const placesOn = (path: string, element: string): readonly string[] =>
  [...pageText(path).matchAll(new RegExp(`<${element}\\b[^>]*?\\sid="([^"]*)"`, "g"))].map(
    (match) => match[1]!,
  );
const sorted = (names: Iterable<string>) => [...names].sort();

describe("the catalog and its pages are the same, both ways", () => {
  it.each([
    ["rule", pagesIn("rules"), ruleFiles.map(({ id }) => id)],
    ["quantity", pagesIn("quantities"), [...quantities.keys()]],
    ["source", pagesIn("sources"), Object.keys(sources)],
    ["set", placesOn("/sets/", "dt"), setFiles.map(({ id }) => id)],
  ])("each %s has one, and each of these shows one", (_, shown, due) => {
    expect(due.length).toBeGreaterThan(0);
    expect(sorted(shown)).toEqual(sorted(due));
  });
  it("each source has its place in the list of all, where links of old lead", () => {
    const places = new Set(placesOn("/sources/", "li"));
    const list = pageText("/sources/");
    expect(list).toMatch(/with their \d+ cases follow below/);
    expect(
      Object.keys(sources).filter((id) => !places.has(id) || !list.includes(`/sources/${id}/"`)),
    ).toEqual([]);
  });
  it("each rule has its file beside its page, as it stands in the catalog", () => {
    let counted = 0;
    for (const { id, system } of ruleFiles) {
      const own = readFileSync(new URL(`../../rules/${system}/${id}.yaml`, import.meta.url), "utf8");
      expect(readFileSync(join(dist, `rules/${id}/rule.yaml`), "utf8")).toBe(own);
      expect(pageText(`/rules/${id}/`)).toContain(`/rules/${id}/rule.yaml"`);
      counted += 1;
    }
    expect(counted).toBeGreaterThan(300);
  });
  it("each rule and each quantity is named on its page and in the list of all", () => {
    const listOf = { rules: pageText("/rules/"), quantities: pageText("/quantities/") };
    const named = [
      ...ruleFiles.map(({ id, title }) => ({ folder: "rules" as const, id, title })),
      ...[...quantities.values()].map(({ id, name }) => ({ folder: "quantities" as const, id, title: name })),
    ];
    const escaped = (text: string) =>
      text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&#34;").replaceAll("'", "&#39;");
    const faults = named.flatMap(({ folder, id, title }) => {
      const html = pageText(`/${folder}/${id}/`);
      const heading = /<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1]?.trim();
      return [
        ...([title, escaped(title)].includes(heading ?? "") ? [] : [`${id}: headed "${heading}"`]),
        ...(listOf[folder].includes(`/${folder}/${id}/"`) ? [] : [`${id}: not in the list`]),
      ];
    });
    expect(faults).toEqual([]);
    expect(named.length).toBeGreaterThan(500);
  });
});

describe("the policy of the pages", () => {
  const policyOf = (html: string) =>
    /<meta http-equiv="content-security-policy" content="([^"]*)">/.exec(html)?.[1];
  it("stands on every page before any script, and allows neither generated nor unnamed code", () => {
    let seen = 0;
    const faults = sitePages.flatMap((path) => {
      const html = pageText(path);
      const policy = policyOf(html);
      if (policy === undefined) return [`${path}: none`];
      seen += 1;
      const rules = new Map(policy.split("; ").map((one) => [one.split(" ")[0], one.split(" ").slice(1)]));
      const only = (name: string, ...values: string[]) =>
        JSON.stringify(rules.get(name)) === JSON.stringify(values)
          ? []
          : [`${path}: ${name} ${rules.get(name)}`];
      const loose = (rules.get("script-src") ?? []).filter(
        (value) => !["'self'", "'wasm-unsafe-eval'"].includes(value) && !/^'sha256-[\w+/]{43}='$/.test(value),
      );
      return [
        ...(html.indexOf(policy) < html.indexOf("<script") ? [] : [`${path}: after a script`]),
        ...only("default-src", "'self'"),
        ...only("connect-src", "'self'"),
        ...only("worker-src", "'self'"),
        ...only("object-src", "'none'"),
        ...loose.map((value) => `${path}: script-src ${value}`),
      ];
    });
    expect(faults.slice(0, 10)).toEqual([]);
    expect(seen).toBe(sitePages.length);
    expect(seen).toBeGreaterThan(ruleFiles.length + quantities.size);
  });
});
