import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  angles,
  cranks,
  deg,
  near,
  offsetCrank,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { topDeadCentre } from "./deadCentres.ts";
import { pinHeight } from "./pinHeight.ts";
import { pistonVelocity } from "./pistonVelocity.ts";

test("example", () => {
  near(pistonVelocity(offsetCrank, 75 * deg, 7800 * rpm), -40.4106, 5e-5);
  refusesNonFinite(pistonVelocity, offsetCrank, 1, 100);
});

property.prop([cranks, angles])("velocity is the derivative of the pin height", (crank, angle) => {
  const step = 1e-5;
  const slope = (pinHeight(crank, angle + step) - pinHeight(crank, angle - step)) / (2 * step);
  near(pistonVelocity(crank, angle, 1), slope, 1e-9);
});

property.prop([cranks])("the piston stands still at top dead centre", (crank) => {
  near(pistonVelocity(crank, topDeadCentre(crank).angle, 1), 0, 1e-15);
});
