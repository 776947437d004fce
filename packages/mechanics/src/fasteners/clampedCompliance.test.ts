import { test } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, GPa, mm, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { clampedCompliance } from "./clampedCompliance.ts";

const joint = { grip: 50 * mm, diameter: 18 * mm, elasticModulus: 90 * GPa };

test.prop([between(5, 300), between(5, 30)])(
  "is the frusta's compliance, summed slice by slice",
  (grip, diameter) => {
    const [l, d] = [grip * mm, diameter * mm];
    const slices = 4000;
    const step = l / 2 / slices;
    let half = 0;
    for (let i = 0; i < slices; i++) {
      // The hole takes d out of a zone that widens from 1.5 d.
      const width = 1.5 * d + 2 * Math.tan(Math.PI / 6) * (i + 0.5) * step;
      half += step / (joint.elasticModulus * (Math.PI / 4) * (width ** 2 - d ** 2));
    }
    nearly(clampedCompliance({ grip: l, diameter: d, elasticModulus: joint.elasticModulus }), 2 * half, 1e-5);
  },
);

test.prop([between(1.1, 4)])("a longer grip gives more, a stiffer metal less", (times) => {
  expect(clampedCompliance({ ...joint, grip: times * joint.grip })).toBeGreaterThan(clampedCompliance(joint));
  nearly(
    clampedCompliance({ ...joint, elasticModulus: times * joint.elasticModulus }),
    clampedCompliance(joint) / times,
  );
});

test("refusals", () => refusesNonFinite(clampedCompliance, joint));
