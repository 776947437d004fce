import { readdirSync, readFileSync } from "node:fs";
import { systems } from "@trialfit/rules";
import { h } from "preact";
import { render } from "preact-render-to-string";
import { formatNumber, Nominals, parts, pathsOf, quantities, readBuildText, traceKinds } from "trialfit";
import { expect, it } from "vitest";
import { rules } from "../data/catalog.ts";
import { choosePlace, PlacePicture } from "./PlacePicture.tsx";
import { drawView } from "./place/drawView.tsx";
import { partsUnder } from "./place/partsUnder.ts";
import { partViews } from "./place/partViews.ts";
import { systemViews } from "./place/systemViews.ts";
import { viewsOfQuantity, viewsOfRule } from "./place/viewsOf.ts";
import { viewsOfGap } from "./place/viewsOfGap.ts";

const folder = new URL("../../../packages/core/demo/", import.meta.url);
const builds = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => readBuildText(readFileSync(new URL(file, folder), "utf8"), file))
  .map((build) => ({ name: build.name, nominals: new Nominals(build), build }));

/** A build that remembers which parts a picture asks it about. */
class Watched extends Nominals {
  readonly asked = new Set<string>();
  private note(path: string) {
    for (const part of partsUnder(path)) this.asked.add(part);
  }
  override size(path: string) {
    this.note(path);
    return super.size(path);
  }
  override rows(path: string) {
    this.note(path);
    return super.rows(path);
  }
  override band(path: string) {
    this.note(path);
    return super.band(path);
  }
  override ask(asking: Parameters<Nominals["ask"]>[0]) {
    for (const path of pathsOf(asking)) this.note(path);
    return super.ask(asking);
  }
}

it("every part and every system has its views", () => {
  expect(Object.keys(partViews).sort()).toEqual(parts.map(({ spec }) => spec.id).sort());
  expect(Object.keys(systemViews)).toEqual(Object.keys(systems));
});

it("every rule is shown in a place that is about it, with its numbers in words", () => {
  const kinds = new Map<string, number>();
  const elsewhere: string[] = [];
  let fallBack = 0;
  for (const rule of rules) {
    const views = viewsOfRule(rule);
    const chosen = choosePlace(views, builds);
    expect(chosen, rule.file.id).toBeDefined();
    const last = views.at(-1);
    if (chosen!.view === last) fallBack += 1;
    kinds.set(chosen!.view.kind, (kinds.get(chosen!.view.kind) ?? 0) + 1);
    const watched = new Watched(chosen!.build.build);
    drawView(chosen!.view, watched);
    if (!rule.file.parts.some((part) => watched.asked.has(part)))
      elsewhere.push(`${rule.file.id} (${rule.file.parts.join(" ")}): ${chosen!.view.kind}`);
    const html = render(h(PlacePicture, { views, builds }));
    expect(html, rule.file.id).toMatch(/role="img" aria-label="[^"]*\d[^"]*"/);
    expect(html, rule.file.id).not.toMatch(/NaN|undefined|Infinity/);
  }
  console.log([...kinds].map(([kind, count]) => `${kind} ${count}`).join(", "), `of ${rules.length} rules`);
  expect(rules.length).toBeGreaterThan(300);
  // What no size in a build file tells: fuel on the bench, cracks, spark plugs.
  expect(elsewhere.length, elsewhere.join("; ")).toBeLessThanOrEqual(6);
  expect(fallBack).toBe(0);
  expect(kinds.size).toBeGreaterThanOrEqual(11);
});

it("every quantity is shown as well", () => {
  let count = 0;
  for (const quantity of quantities.values()) {
    expect(choosePlace(viewsOfQuantity(quantity), builds), quantity.id).toBeDefined();
    count += 1;
  }
  expect(count).toBeGreaterThan(400);
});

it("a gap that is drawn where it is narrowest says the catalog's own number", () => {
  let count = 0;
  for (const { id, extremes } of traceKinds.values())
    for (const { name, nominals } of builds) {
      const [{ of }] = extremes;
      const [view] = viewsOfGap(of);
      const value = nominals.size(of);
      if (view?.kind !== "mechanism" || view.mark !== id || value === undefined) continue;
      const { unit, decimals } = quantities.get(of)!;
      const html = render(drawView(view, nominals, { name })!);
      expect(html, `${id} of ${name}`).toContain(`>${formatNumber(value, unit, { decimals })}</text>`);
      count += 1;
    }
  expect(count).toBeGreaterThanOrEqual(10);
});
