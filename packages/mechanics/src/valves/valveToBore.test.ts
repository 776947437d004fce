import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { valveToBore } from "./valveToBore.ts";

const valve = {
  bore: 104 * mm,
  centreDistance: 22 * mm,
  centreAlong: 0,
  valveRadius: 27.3 * mm,
  valveTilt: 0,
  lift: 0,
};

test("examples", () => {
  near(valveToBore(valve) / mm, 2.7, 1e-9);
  const tilted = { ...valve, valveTilt: 10 * deg, lift: 8 * mm };
  near(valveToBore(tilted) / mm, 52 - (22 - 8 * Math.sin(10 * deg) + 27.3 * Math.cos(10 * deg)), 1e-9);
  // Tilted the other way the valve opens towards the wall.
  const outwards = valveToBore({ ...tilted, valveTilt: -10 * deg });
  near(outwards / mm, 52 - (22 + 8 * Math.sin(10 * deg) + 27.3 * Math.cos(10 * deg)), 1e-9);
});

test("a central valve reaches out to the sides of its tilt", () => {
  const central = { ...valve, centreDistance: 0, valveTilt: 30 * deg };
  near(valveToBore(central) / mm, 52 - 27.3, 1e-9);
});

const tilts = between(-1, 1);
const distances = between(0, 0.03);

property.prop([distances, tilts, between(0, 0.015), between(-0.03, 0.03)])(
  "agrees with the rim taken point by point",
  (centreDistance, valveTilt, lift, centreAlong) => {
    const input = { ...valve, centreDistance, centreAlong, valveTilt, lift };
    let farthest = 0;
    for (let i = 0; i < 7200; i++) {
      const phi = (i / 20) * deg;
      const x = centreDistance - lift * Math.sin(valveTilt) + 27.3 * mm * Math.cos(valveTilt) * Math.cos(phi);
      farthest = Math.max(farthest, Math.hypot(x, centreAlong + 27.3 * mm * Math.sin(phi)));
    }
    near(valveToBore(input), 52 * mm - farthest, 1e-8);
  },
);

property.prop([distances, tilts, between(0, 0.015), between(0, 1), between(-0.03, 0.03)])(
  "an end of the lifts is always the worst",
  (centreDistance, valveTilt, greatest, share, centreAlong) => {
    const at = (lift: number) => valveToBore({ ...valve, centreDistance, centreAlong, valveTilt, lift });
    expect(at(share * greatest)).toBeGreaterThanOrEqual(Math.min(at(0), at(greatest)) - 1e-12);
  },
);

test("an upright valve of a pair, by hand: its centre lies 3-4-5 from the axis", () => {
  near(valveToBore({ ...valve, centreDistance: 12 * mm, centreAlong: -16 * mm }) / mm, 52 - 20 - 27.3, 1e-9);
});

test("boundary", () => {
  refuses(() => valveToBore({ ...valve, bore: 0 }), "bore");
  refuses(() => valveToBore({ ...valve, centreDistance: -1e-9 }), "centreDistance");
  refuses(() => valveToBore({ ...valve, lift: -1e-9 }), "lift");
  refusesNonFinite(valveToBore, valve);
});
