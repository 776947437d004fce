import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import { between, deg, mm, near, refuses } from "../check/support.test-support.ts";
import { eightCrank, eightPoints, outlineOf, sampledLeast } from "./rodSweep.test-support.ts";
import { rodToCamshaft } from "./rodToCamshaft.ts";
import { type RodToLobes, rodToLobes } from "./rodToLobes.ts";

const outline = outlineOf(eightPoints);
/** A smooth lobe pair: inlet 105 degrees after overlap top dead centre, exhaust 111 before it. */
const liftAt = (angle: number): number => {
  const bump = (centre: number, height: number) => {
    const turned = Math.cos((angle - centre * deg) / 2);
    return turned > 0 ? height * turned ** 8 : 0;
  };
  return Math.max(bump(105, 10.4 * mm), bump(-111, 10.2 * mm));
};
const eight: RodToLobes = {
  crank: eightCrank,
  outline,
  across: 0,
  height: Math.hypot(78.9, 78.9) * mm,
  bankAngle: 90 * deg,
  baseRadius: 15 * mm,
  liftAt,
  followerLean: 0,
  sense: 1,
};
const row: RodToLobes = {
  ...eight,
  crank: { ...eightCrank, pinLineOffset: 0.8 * mm },
  across: 92 * mm,
  height: 66 * mm,
  bankAngle: 0,
  followerLean: -4 * deg,
};

test("a camshaft that lifts all round is the circle of the envelope", () => {
  const round = { ...eight, liftAt: () => 10.4 * mm };
  near(rodToLobes(round).clearance, rodToCamshaft({ ...eight, lobeRadius: 25.4 * mm }).clearance, 2e-6);
  const { clearance } = rodToLobes({ ...eight, liftAt: () => 0 });
  near(clearance, rodToCamshaft({ ...eight, lobeRadius: 15 * mm }).clearance, 1e-6);
});

property.prop([between(-8, 8), between(100, 120)], { numRuns: 8 })(
  "never nearer than the envelope, never farther than the base circle",
  (across, height) => {
    const place = { ...eight, across: across * mm, height: height * mm };
    const found = rodToLobes(place).clearance;
    expect(found).toBeGreaterThan(rodToCamshaft({ ...place, lobeRadius: 25.4 * mm }).clearance - 1e-6);
    expect(found).toBeLessThan(rodToCamshaft({ ...place, lobeRadius: 15 * mm }).clearance + 1e-6);
  },
);

test("mirrored, with the events in reverse, the clearance is the same", () => {
  for (const sense of [1, -1] as const) {
    const mirrored = {
      ...row,
      sense,
      crank: { ...row.crank, pinLineOffset: -0.8 * mm },
      across: -row.across,
      followerLean: 4 * deg,
      liftAt: (angle: number) => liftAt(-angle),
    };
    near(rodToLobes(mirrored).clearance, rodToLobes({ ...row, sense }).clearance, 1e-6);
  }
});

/**
 * The lobe in space, point by point: the camshaft turns from where its follower looks along it, and a point of
 * its outside is known by the lift at the instant at which it passes the follower.
 */
function lobeInSpace(
  one: RodToLobes,
  axis: readonly [number, number],
  followers: readonly (readonly [direction: number, delay: number])[],
) {
  const count = 1440;
  const fixed = Array.from({ length: count }, (_, i) => {
    // Where this material stands at crank angle 0, as a direction from the cylinder axis towards +x.
    const direction = (2 * Math.PI * i) / count;
    const lifts = followers.map(([follower, delay]) => {
      const turn = one.sense * (follower - direction);
      return liftAt(2 * turn + delay);
    });
    return { direction, radius: one.baseRadius + Math.max(...lifts) };
  });
  return (x: number, y: number, angle: number): number => {
    const [dx, dy] = [x - axis[0], y - axis[1]];
    const rough = Math.hypot(dx, dy);
    // Only the neighbourhood of the foot is looked at point by point.
    const foot = Math.atan2(dx, dy) - (one.sense * angle) / 2;
    const middle = Math.round((foot / (2 * Math.PI)) * count);
    let least = Number.POSITIVE_INFINITY;
    let inside = false;
    for (let k = -160; k <= 160; k++) {
      const { direction, radius } = fixed[(((middle + k) % count) + count) % count]!;
      const now = direction + (one.sense * angle) / 2;
      least = Math.min(least, Math.hypot(dx - radius * Math.sin(now), dy - radius * Math.cos(now)));
      if (k === 0) inside = rough < radius;
    }
    return inside ? -least : least;
  };
}

describe("agrees with points of the lobes followed through space", () => {
  const slack = 0.02 * mm;
  const within = (
    one: RodToLobes,
    distance: ReturnType<typeof lobeInSpace>,
    near1: readonly [number, number],
  ) =>
    sampledLeast(
      eightPoints,
      one.crank,
      (x, y, angle) => {
        const rough = Math.hypot(x - near1[0], y - near1[1]);
        return rough > 45 * mm ? rough - 26 * mm : distance(x, y, angle);
      },
      2,
    );
  test.each([1, -1] as const)("one row, sense %i", (sense) => {
    const one = { ...row, sense };
    const axis = [row.across, row.height] as const;
    const sampled = within(one, lobeInSpace(one, axis, [[row.followerLean, 0]]), axis);
    near(rodToLobes(one).clearance, sampled, slack);
  });
  test("an eight: the lobes of both cylinders, the other's in either turn", () => {
    const banks = [45 * deg, -45 * deg].map((tilt) => {
      const axis = [-eight.height * Math.sin(tilt), eight.height * Math.cos(tilt)] as const;
      const lean = -2 * tilt;
      // At its own top the pin stands at the tilt; the other bank has its top when the pin stands at the other.
      const followers = [
        [0, 0],
        [lean, 2 * tilt],
        [lean, 2 * tilt + 2 * Math.PI],
      ] as const;
      return within(eight, lobeInSpace(eight, axis, followers), axis);
    });
    near(rodToLobes(eight).clearance, Math.min(...banks), slack);
  });
});

test("boundary", () => {
  refuses(() => rodToLobes({ ...eight, baseRadius: 0 }), "baseRadius");
  refuses(() => rodToLobes({ ...eight, followerLean: Number.NaN }), "followerLean");
  refuses(() => rodToLobes({ ...eight, liftAt: () => -1e-6 }), "liftAt(0)".replace(/[()]/g, "\\$&"));
});
