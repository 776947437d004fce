import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { axialShift, crankEndPlay, hotCrankEndPlay } from "./crankEndPlay.ts";

const sizes = { journalLength: 27.2 * mm, webWidth: 22 * mm, washerThickness: 2.52 * mm };
const hot = {
  endPlay: 0.16 * mm,
  journal: { size: 27.2 * mm, expansion: 12e-6, temperatureRise: 90 },
  web: { size: 22 * mm, expansion: 21.5e-6, temperatureRise: 75 },
  washer: { size: 2.52 * mm, expansion: 12e-6, temperatureRise: 80 },
};

test("examples", () => {
  near(crankEndPlay(sizes) / mm, 0.16, 1e-9);
  near(hotCrankEndPlay(hot) / mm, 0.149, 5e-4);
  const shift = axialShift({
    block: { size: 0.4, expansion: 21.5e-6, temperatureRise: 80 },
    crankshaft: { size: 0.4, expansion: 12e-6, temperatureRise: 90 },
  });
  near(shift / mm, 0.256, 5e-7);
});

property.prop([between(5e-6, 25e-6), between(-40, 150)])(
  "all of one metal, it grows as one length",
  (a, t) => {
    const part = (size: number) => ({ size, expansion: a, temperatureRise: t });
    const grown = hotCrankEndPlay({
      endPlay: crankEndPlay(sizes),
      journal: part(sizes.journalLength),
      web: part(sizes.webWidth),
      washer: part(sizes.washerThickness),
    });
    nearly(grown, crankEndPlay(sizes) * (1 + a * t));
  },
);

test("boundary", () => {
  refuses(() => crankEndPlay({ ...sizes, webWidth: 0 }), "webWidth");
  refusesNonFinite(crankEndPlay, sizes);
  refusesNonFinite(hotCrankEndPlay, hot);
  refusesNonFinite(axialShift, { block: hot.web, crankshaft: hot.journal });
});
