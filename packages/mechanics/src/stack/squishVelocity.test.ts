import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  refuses,
  refusesNonFinite,
  rpm,
} from "../check/support.test-support.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import { greatestSquishVelocity, type SquishBand, squishVelocity } from "./squishVelocity.ts";

const pistonArea = (Math.PI / 4) * (86.5 * mm) ** 2;
const band: SquishBand = {
  crank: centredCrank,
  pistonArea,
  bandArea: 0.35 * pistonArea,
  edgeLength: 120 * mm,
  gap: 1 * mm,
  clearanceVolume: 60e-6,
  angularSpeed: 7000 * rpm,
};

test("the worked value, and the greatest a little before top dead centre", () => {
  near(squishVelocity(band, -8 * deg), 57.644, 0.0005);
  const { velocity, angle } = greatestSquishVelocity(band);
  expect(velocity).toBeGreaterThan(57.644);
  expect(angle).toBeGreaterThan(-12 * deg);
  expect(angle).toBeLessThan(-6 * deg);
});

test("a gap worn down to nothing lets the speed grow, a wide one lets it fall", () => {
  const at = (gap: number) => greatestSquishVelocity({ ...band, gap }).velocity;
  expect(at(0.5 * mm)).toBeGreaterThan(1.3 * at(1 * mm));
  expect(at(5 * mm)).toBeLessThan(0.5 * at(1 * mm));
});

property.prop([cranks, between(-60, 60), between(0.1, 0.6), between(0.5, 3)], { numRuns: 60 })(
  "carries away what the band loses while the charge has one density",
  (crank, degrees, share, gap) => {
    const one = { ...band, crank, bandArea: share * pistonArea, gap: gap * mm, clearanceVolume: 2e-4 };
    const angle = degrees * deg;
    const top = topDeadCentre(crank).height;
    const mass = 1e-3;
    const volumeAt = (at: number) => one.clearanceVolume + pistonArea * (top - pinHeight(crank, at));
    const heldAt = (at: number) =>
      (mass / volumeAt(at)) * one.bandArea * (one.gap + top - pinHeight(crank, at));
    const step = 1e-4;
    const lost = (-(heldAt(angle + step) - heldAt(angle - step)) / (2 * step)) * one.angularSpeed;
    const density = mass / volumeAt(angle);
    const section = one.edgeLength * (one.gap + top - pinHeight(crank, angle));
    near(squishVelocity(one, angle), lost / (density * section), 1e-4);
    // It changes its sign with the speed of the piston.
    near(squishVelocity(one, topDeadCentre(crank).angle), 0, 1e-9);
    const sampled = Array.from({ length: 900 }, (_, i) =>
      squishVelocity(one, topDeadCentre(crank).angle - (i * Math.PI) / 1800),
    );
    near(greatestSquishVelocity(one).velocity, Math.max(...sampled), 1e-3 * Math.max(...sampled));
    expect(greatestSquishVelocity(one).velocity).toBeGreaterThanOrEqual(Math.max(...sampled) - 1e-9);
  },
);

test("boundary", () => {
  refuses(() => squishVelocity({ ...band, bandArea: 2 * pistonArea }, 0), "bandArea");
  refuses(() => squishVelocity({ ...band, clearanceVolume: 2e-6 }, 0), "clearanceVolume");
  refusesNonFinite(squishVelocity, band, 0.1);
  refusesNonFinite(greatestSquishVelocity, band);
});
