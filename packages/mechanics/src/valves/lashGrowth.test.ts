import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { lashGrowth } from "./lashGrowth.ts";

const [aluminium, steel] = [21.5e-6, 12e-6];
const train = {
  head: { size: 110 * mm, expansion: aluminium, temperatureRise: 90 },
  pushrod: { size: 195 * mm, expansion: steel, temperatureRise: 75 },
  blockExpansion: aluminium,
  blockTemperatureRise: 80,
  rockerRatio: 1.6,
};

test("example: an aluminium engine opens its lash", () => {
  near(lashGrowth(train) / mm, 0.2937, 5e-5);
});

property.prop([between(0, 100), between(0.02, 0.18), between(1, 2)])(
  "one metal at one temperature keeps its lash",
  (temperatureRise, size, rockerRatio) => {
    const found = lashGrowth({
      head: { size, expansion: steel, temperatureRise },
      pushrod: { size: 195 * mm, expansion: steel, temperatureRise },
      blockExpansion: steel,
      blockTemperatureRise: temperatureRise,
      rockerRatio,
    });
    near(found, 0, 1e-15);
  },
);

test("boundary", () => {
  refuses(() => lashGrowth({ ...train, head: { ...train.head, size: 195 * mm } }), "head.size");
  refuses(() => lashGrowth({ ...train, rockerRatio: 0 }), "rockerRatio");
  refusesNonFinite(lashGrowth, train);
});
