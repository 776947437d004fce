import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { crankAngleOfHeight } from "./crankAngleOfHeight.ts";
import { bottomDeadCentre, topDeadCentre } from "./deadCentres.ts";
import { pinHeight } from "./pinHeight.ts";

test("example: 2 mm below top dead centre", () => {
  near(crankAngleOfHeight(centredCrank, 189.5 * mm, "down") / deg, 14.5847, 5e-5);
  near(crankAngleOfHeight(centredCrank, 189.5 * mm, "up") / deg, -14.5847, 5e-5);
});

test("the dead centres are the last heights reached", () => {
  const top = topDeadCentre(offsetCrank);
  near(crankAngleOfHeight(offsetCrank, top.height, "down"), top.angle, 1e-7);
  refuses(() => crankAngleOfHeight(offsetCrank, top.height + 1e-9, "down"), "height");
  refuses(() => crankAngleOfHeight(offsetCrank, bottomDeadCentre(offsetCrank).height - 1e-9, "up"), "height");
  refusesNonFinite(
    (crank: typeof offsetCrank, height: number) => crankAngleOfHeight(crank, height, "up"),
    offsetCrank,
    0.15,
  );
});

property.prop([cranks, between(0.01, 3.1)])("angle to height and back, both strokes", (crank, after) => {
  const down = topDeadCentre(crank).angle + after;
  if (down < bottomDeadCentre(crank).angle) {
    near(crankAngleOfHeight(crank, pinHeight(crank, down), "down"), down, 1e-9);
  }
  const up = topDeadCentre(crank).angle - after;
  if (up > bottomDeadCentre(crank).angle - 2 * Math.PI) {
    near(crankAngleOfHeight(crank, pinHeight(crank, up), "up"), up, 1e-9);
  }
});
