import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, deg, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { standInLiftCurve } from "../valves/standInLiftCurve.ts";
import { lobes } from "../valves/valves.test-support.ts";
import { valveEvents } from "./valveEvents.ts";

const cam = {
  inletCentre: 110 * deg,
  exhaustCentre: 112 * deg,
  inletDuration: 276 * deg,
  exhaustDuration: 276 * deg,
};

test("example", () => {
  const events = valveEvents(cam);
  near(events.inletOpening / deg, 28, 1e-9);
  near(events.inletClosing / deg, 68, 1e-9);
  near(events.exhaustOpening / deg, 70, 1e-9);
  near(events.exhaustClosing / deg, 26, 1e-9);
  near(events.overlap / deg, 54, 1e-9);
  near(events.lobeSeparation / deg, 111, 1e-9);
});

test("a short cam has less than no overlap", () => {
  near(
    valveEvents({ ...cam, inletDuration: 180 * deg, exhaustDuration: 180 * deg }).overlap / deg,
    -42,
    1e-9,
  );
});

property.prop([lobes, lobes])("the lift curves stand at the stated lift at the events", (inlet, exhaust) => {
  const events = valveEvents({
    inletCentre: inlet.centre,
    exhaustCentre: exhaust.centre,
    inletDuration: inlet.longer.duration,
    exhaustDuration: exhaust.longer.duration,
  });
  const inletCurve = standInLiftCurve(inlet);
  const exhaustCurve = standInLiftCurve({ ...exhaust, centre: -exhaust.centre });
  near(inletCurve.at(-events.inletOpening).lift, inlet.longer.lift, 1e-12);
  near(inletCurve.at(Math.PI + events.inletClosing).lift, inlet.longer.lift, 1e-12);
  near(exhaustCurve.at(-Math.PI - events.exhaustOpening).lift, exhaust.longer.lift, 1e-12);
  near(exhaustCurve.at(events.exhaustClosing).lift, exhaust.longer.lift, 1e-12);
});

property.prop([between(1, 3), between(1, 3), between(3, 6)])(
  "with equal durations the overlap is one of them less twice the lobe separation",
  (inletCentre, exhaustCentre, duration) => {
    const events = valveEvents({
      inletCentre,
      exhaustCentre,
      inletDuration: duration,
      exhaustDuration: duration,
    });
    near(events.overlap, duration - 2 * events.lobeSeparation, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => valveEvents({ ...cam, inletCentre: 0 }), "inletCentre");
  refuses(() => valveEvents({ ...cam, exhaustCentre: 2 * Math.PI }), "exhaustCentre");
  refuses(() => valveEvents({ ...cam, exhaustDuration: 4 * Math.PI }), "exhaustDuration");
  refusesNonFinite(valveEvents, cam);
});
