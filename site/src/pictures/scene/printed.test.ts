import { readFileSync } from "node:fs";
import { h } from "preact";
import { render } from "preact-render-to-string";
import { type CompiledRule, evaluate, Nominals, quantities, readBuildText } from "trialfit";
import { expect, it } from "vitest";
import { rules } from "../../data/catalog.ts";
import { PlacePicture } from "../PlacePicture.tsx";
import { quantitiesOf, viewsOfRule } from "../place/viewsOf.ts";
import { printed } from "./printed.ts";

const text = readFileSync(
  new URL("../../../../packages/core/demo/larkspur-hill.yaml", import.meta.url),
  "utf8",
);
const build = readBuildText(text);
const nominals = new Nominals(build);

const notched: CompiledRule = rules.find(({ file }) => file.id === "rod-clears-cylinder-bottom")!;

it("never says a value at the nominal sizes as if it held over the tolerances", () => {
  let count = 0;
  for (const { id, shape, nominalOnly } of quantities.values()) {
    const plain = printed(nominals, id);
    if (shape !== "guarded" || nominalOnly || plain === undefined) continue;
    expect(plain, id).toMatch(/ at the nominal sizes$/);
    expect(
      printed(nominals, id, () => ({ low: 1e6, nominal: 2e6, high: 3e6 })),
      id,
    ).toMatch(/\(.* to .*\)/);
    count += 1;
  }
  expect(count).toBeGreaterThan(10);
});

it("gives beside a picture what the remedy of the rule gives: the most that the tolerances ask for", async () => {
  const report = await evaluate(build, { rules: [notched.file] });
  const remedy = report.verdicts.find(({ rule }) => rule === notched.file.id)!;
  const asked = /at least (\S+ mm) deep .*?, (\S+ mm) high/.exec(JSON.stringify(remedy))!;
  expect(asked).not.toBeNull();
  const html = render(
    h(PlacePicture, {
      views: viewsOfRule(notched),
      builds: [
        { name: build.name, nominals, report: await evaluate(build, { quantities: "all", rules: [] }) },
      ],
      tells: quantitiesOf(notched),
    }),
  );
  // A band is rounded to the nearest, what a remedy asks for to the safe side.
  for (const [name, least] of [
    ["depth", asked[1]],
    ["height", asked[2]],
  ] as const) {
    const most = new RegExp(`Notch ${name} needed: [^<]*? to (\\S+) mm\\)`).exec(html)!;
    expect(Number.parseFloat(least!) - Number(most[1])).toBeGreaterThanOrEqual(-1e-9);
    expect(Number.parseFloat(least!) - Number(most[1])).toBeLessThan(0.011);
  }
});
