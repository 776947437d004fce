import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { standInLiftCurve } from "../valves/standInLiftCurve.ts";
import { constantCurve, exampleLobe, inletCurve, lobes } from "../valves/valves.test-support.ts";
import { flatFollowerContactTravel, flatFollowerEdgeRoom } from "./flatFollowerEdge.ts";

test("example", () => {
  // 8.9 mm per radian of the camshaft is 4.45 mm per radian of the crankshaft.
  const { travel } = flatFollowerContactTravel({ curve: constantCurve(5 * mm, -4.45 * mm), rockerRatio: 1 });
  near(travel / mm, 8.9, 1e-9);
  near(flatFollowerEdgeRoom({ followerDiameter: 20 * mm, contactTravel: travel }) / mm, 1.1, 1e-9);
});

test("on the stand-in curve it is where its slope is greatest", () => {
  const { exponent: p, seatDuration } = standInLiftCurve(exampleLobe);
  // cos^(p-1) sin is greatest at sin^2 = 1 / p.
  const k = Math.PI / seatDuration;
  const greatest = 11 * mm * p * k * (1 - 1 / p) ** ((p - 1) / 2) * Math.sqrt(1 / p);
  const found = flatFollowerContactTravel({ curve: inletCurve, rockerRatio: 1.5 });
  nearly(found.travel, (2 * greatest) / 1.5, 1e-9);
  near(Math.abs(found.angle - exampleLobe.centre), Math.asin(Math.sqrt(1 / p)) / k, 1e-4);
});

property.prop([lobes], { numRuns: 40 })(
  "is where the line of contact stands: lift built up from the cam's envelope",
  (lobe) => {
    // A cam of base radius 20 mm: its point of contact is (e, R + L) in the frame of the follower. Turned back
    // into the cam's frame these points must form a curve whose tangent is the follower's face.
    const curve = standInLiftCurve(lobe);
    const { travel, angle } = flatFollowerContactTravel({ curve, rockerRatio: 1 });
    const pointOf = (crank: number) => {
      const { lift, slope } = curve.at(crank);
      const [e, h, cam] = [2 * slope, 20 * mm + lift, crank / 2];
      return [e * Math.cos(cam) + h * Math.sin(cam), -e * Math.sin(cam) + h * Math.cos(cam)] as const;
    };
    const step = 1e-5;
    const [before, after] = [pointOf(angle - step), pointOf(angle + step)];
    const [tx, ty] = [after[0] - before[0], after[1] - before[1]];
    // The face's normal, turned back with the cam.
    const off = (tx * Math.sin(angle / 2) + ty * Math.cos(angle / 2)) / Math.hypot(tx, ty);
    near(off, 0, 1e-4);
    near(Math.abs(2 * curve.at(angle).slope), travel, 1e-15);
  },
);

property.prop([between(1, 2)])("a rocker lets the follower move less", (rockerRatio) => {
  const direct = flatFollowerContactTravel({ curve: inletCurve, rockerRatio: 1 }).travel;
  nearly(flatFollowerContactTravel({ curve: inletCurve, rockerRatio }).travel * rockerRatio, direct, 1e-12);
});

test("boundary", () => {
  refuses(() => flatFollowerContactTravel({ curve: inletCurve, rockerRatio: 0 }), "rockerRatio");
  refuses(() => flatFollowerEdgeRoom({ followerDiameter: 0, contactTravel: 0 }), "followerDiameter");
  refuses(() => flatFollowerEdgeRoom({ followerDiameter: 1, contactTravel: -1 }), "contactTravel");
  refusesNonFinite(flatFollowerContactTravel, { curve: inletCurve, rockerRatio: 1 });
  refusesNonFinite(flatFollowerEdgeRoom, { followerDiameter: 20 * mm, contactTravel: 5 * mm });
  near(flatFollowerContactTravel({ curve: constantCurve(0), rockerRatio: 1 }).travel / deg, 0, 0);
});
