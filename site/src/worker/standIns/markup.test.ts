import { readdirSync, readFileSync } from "node:fs";
import { h } from "preact";
import { render as renderWithPreact } from "preact-render-to-string";
import { Nominals, readBuildText } from "trialfit";
import { expect, it } from "vitest";
import { rules } from "../../data/catalog.ts";
import { PlacePicture } from "../../pictures/PlacePicture.tsx";
import { viewsOfRule } from "../../pictures/place/viewsOf.ts";
import type { FromViewer } from "../../workbench/protocol.ts";
import { charts } from "../../workbench/worker/charts.ts";
import { Viewer } from "../../workbench/worker/Viewer.tsx";
import { jsx, render } from "./markup.ts";

const folder = new URL("../../../../packages/core/demo/", import.meta.url);
const files = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => ({ file, text: readFileSync(new URL(file, folder), "utf8") }));
const builds = files.map(({ file, text }) => {
  const build = readBuildText(text, file);
  return { name: build.name, nominals: new Nominals(build), build };
});

it("draws the picture of every rule as preact does", () => {
  const drawn = new Set<string>();
  for (const rule of rules) {
    const picture = h(PlacePicture, { views: viewsOfRule(rule), builds });
    const markup = render(picture as unknown as Parameters<typeof render>[0]);
    expect(markup).toBe(renderWithPreact(picture));
    drawn.add(markup);
  }
  expect(drawn.size).toBeGreaterThan(20);
});

it("draws every chart", () => {
  const told: FromViewer[] = [];
  const viewer = new Viewer((message) => told.push(message));
  for (const { text, file } of files)
    for (const { id } of charts)
      viewer.take({ kind: "look", sequence: 1, text, file, view: { angle: 1, chart: id, mark: "" } });
  expect(told.filter(({ kind }) => kind === "turned")).toHaveLength(files.length * charts.length);
});

it("writes texts and attributes as preact does, and escapes them", () => {
  const cases = [
    [{ id: 'a"<&>b' }, ["1 < 2 & 3 > 2", 0, null, false, true, undefined, ["x", 4]]],
    [{ hidden: true, title: undefined, lang: null, "aria-hidden": false, "data-on": true }, "text"],
    [{ tabindex: 0, class: "", style: "stroke-width: 2" }, []],
  ] as const;
  for (const [props, children] of cases) {
    const mine = jsx("p", { ...props, children: [children, jsx("br", {})] });
    const theirs = h("p", props as object, children as never, h("br", null));
    expect(render(mine)).toBe(renderWithPreact(theirs));
  }
  expect(() => render(jsx("p", { onClick: () => 1 }))).toThrow(/cannot be drawn/);
});
