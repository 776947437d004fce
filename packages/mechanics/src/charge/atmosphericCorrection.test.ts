import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { atmosphericCorrection, atmosphericCorrectionIso } from "./atmosphericCorrection.ts";

const both = [atmosphericCorrection, atmosphericCorrectionIso];
const hot = { dryPressure: 96_000, temperature: 303 };

test("examples", () => {
  near(atmosphericCorrection(hot), 1.047, 5e-4);
  // (99 / 96)^1.2 (303 / 298.15)^0.6 = 1.03762 x 1.00973.
  near(atmosphericCorrectionIso(hot), 1.0477, 5e-5);
});

test.each(both)("%o is 1 in standard air, and refuses what is no air", (correction) => {
  nearly(correction({ dryPressure: 99_000, temperature: 298.15 }), 1);
  refuses(() => correction({ ...hot, dryPressure: 0 }), "dryPressure");
  refuses(() => correction({ ...hot, temperature: 0 }), "temperature");
  refusesNonFinite(correction, hot);
});

property.prop([between(92_000, 102_000), between(283, 308)])(
  "the two standards stay within 1 % of each other, and thin or hot air raises both",
  (dryPressure, temperature) => {
    nearly(
      atmosphericCorrection({ dryPressure, temperature }),
      atmosphericCorrectionIso({ dryPressure, temperature }),
      0.01,
    );
    for (const correction of both) {
      const here = correction({ dryPressure, temperature });
      expect(correction({ dryPressure: dryPressure - 500, temperature })).toBeGreaterThan(here);
      expect(correction({ dryPressure, temperature: temperature + 5 })).toBeGreaterThan(here);
    }
  },
);
