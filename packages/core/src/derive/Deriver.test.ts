import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readBuildText } from "../read/readBuild.ts";
import { Deriver } from "./Deriver.ts";
import { quantities } from "./generated/quantities.ts";
import { finish } from "./Steps.ts";
import { withDefaults } from "./withDefaults.ts";

const text = readFileSync(new URL("../../demo/harrow-eight.yaml", import.meta.url), "utf8");

/** The demo build with every size moved by a part of it: nothing is remembered of it. */
function moved(part: number) {
  const build = readBuildText(text, "harrow-eight");
  return withDefaults({
    ...build,
    values: new Map(
      [...build.values].map(([path, value]) => {
        if (value.kind !== "dimension" || Number.isInteger(value.nominal)) return [path, value];
        const { nominal, low, high } = value;
        const scale = 1 + part;
        return [path, { ...value, nominal: nominal * scale, low: low * scale, high: high * scale }];
      }),
    ),
  });
}

/** Searches of a moment: what sweeps or runs an engine takes its time and is derived by the same lines. */
const quick = [...quantities.values()].filter(({ formula }) => formula !== undefined).map(({ id }) => id);

it("the band alone is that of the whole derivation, whichever was asked for first", () => {
  let compared = 0;
  for (const [part, bandFirst] of [
    [2e-9, true],
    [3e-9, false],
  ] as const) {
    const values = moved(part);
    const bands = Deriver.ofBands(values, quantities);
    const whole = new Deriver(values, quantities);
    for (const id of quick) {
      const order = bandFirst ? [bands, whole] : [whole, bands];
      for (const deriver of order) finish(deriver.derive(id));
      const [band, all] = [bands.results.get(id)!, whole.results.get(id)!];
      expect(band.state, id).toBe(all.state);
      if (band.state !== "value" || all.state !== "value") continue;
      expect([band.low, band.nominal, band.high], id).toEqual([all.low, all.nominal, all.high]);
      if (quantities.get(id)!.nominalOnly) continue;
      expect(all.rootSumSquare, id).toBeDefined();
      if (bandFirst) expect(band.rootSumSquare, id).toBeUndefined();
      // What was derived whole serves as it is.
      else expect(band, id).toBe(all);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(200);
}, 60_000);
