import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  cranks,
  deg,
  mm,
  near,
  nearly,
  offsetCrank,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { bottomDeadCentre, topDeadCentre } from "./deadCentres.ts";
import { pinHeight } from "./pinHeight.ts";

test("examples", () => {
  near(topDeadCentre(offsetCrank).height / mm, 191.49935, 5e-6);
  near(topDeadCentre(offsetCrank).angle / deg, -0.149598, 5e-7);
  near(bottomDeadCentre(offsetCrank).height / mm, 97.498718, 5e-7);
  near(bottomDeadCentre(offsetCrank).angle / deg, 179.706, 5e-4);
  refusesNonFinite(topDeadCentre, offsetCrank);
  refusesNonFinite(bottomDeadCentre, offsetCrank);
});

property.prop([cranks, angles])(
  "the pin is never outside the dead centres and reaches both",
  (crank, angle) => {
    const top = topDeadCentre(crank);
    const bottom = bottomDeadCentre(crank);
    const y = pinHeight(crank, angle);
    expect(y).toBeLessThanOrEqual(top.height * (1 + 1e-12));
    expect(y).toBeGreaterThanOrEqual(bottom.height * (1 - 1e-12));
    nearly(pinHeight(crank, top.angle), top.height, 1e-12);
    nearly(pinHeight(crank, bottom.angle), bottom.height, 1e-12);
  },
);
