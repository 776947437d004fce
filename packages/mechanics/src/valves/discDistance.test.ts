import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near } from "../check/support.test-support.ts";
import { apartAlong, type Disc, discDistance } from "./discDistance.ts";
import { segmentDistance } from "./segmentDistance.ts";

const start = { turn: Math.PI / 2, rise: 0 };
const disc = fc.record({
  x: between(15 * mm, 25 * mm),
  y: between(-20 * mm, 20 * mm),
  z: between(-8 * mm, 8 * mm),
  tilt: between(-40 * deg, 40 * deg),
  radius: between(8 * mm, 20 * mm),
});
const mirrored = (one: Disc): Disc => ({ ...one, x: -one.x, tilt: -one.tilt });

/** Points over a disc, its rim included. */
function pointsOf({ x, y, z, tilt, radius }: Disc, rings: number, spokes: number) {
  return Array.from({ length: (rings + 1) * spokes }, (_, i) => {
    const r = (radius * Math.floor(i / spokes)) / rings;
    const angle = ((i % spokes) * 2 * Math.PI) / spokes;
    return [
      x + r * Math.cos(angle) * Math.cos(tilt),
      y + r * Math.sin(angle),
      z - r * Math.cos(angle) * Math.sin(tilt),
    ] as const;
  });
}

/** Distance of a point from a disc, by hand. */
function pointDistance([px, py, pz]: readonly [number, number, number], { x, y, z, tilt, radius }: Disc) {
  const [dx, dy, dz] = [px - x, py - y, pz - z];
  const off = dx * Math.sin(tilt) + dz * Math.cos(tilt);
  const within = Math.hypot(dx * Math.cos(tilt) - dz * Math.sin(tilt), dy);
  return Math.hypot(off, Math.max(0, within - radius));
}

property.prop([disc, disc], { numRuns: 60 })(
  "discs that lie apart: the least distance of many points of either from the other",
  (first, other) => {
    const second = mirrored(other);
    const found = discDistance(first, second, start).value;
    if (found <= 0) return;
    const sampled = Math.min(
      ...pointsOf(first, 1, 720).map((point) => pointDistance(point, second)),
      ...pointsOf(second, 1, 720).map((point) => pointDistance(point, first)),
    );
    expect(sampled).toBeGreaterThanOrEqual(found - 1e-9);
    // Between two of 720 points on a rim of 20 mm the distance changes by under 0.01 mm.
    expect(sampled).toBeLessThanOrEqual(found + 0.01 * mm);
  },
);

property.prop([disc, disc, between(-1, 1), between(-1, 1)], { numRuns: 60 })(
  "crossing or not: no direction shows them farther apart, and moved apart along its own they just touch",
  (first, other, turn, rise) => {
    const second = mirrored(other);
    const { towards, value } = discDistance(first, second, start);
    expect(apartAlong(first, second, { turn: turn * Math.PI, rise: 1.5 * rise })).toBeLessThanOrEqual(
      value + 1e-9,
    );
    const flat = Math.cos(towards.rise);
    const moved = {
      ...first,
      x: first.x - value * flat * Math.sin(towards.turn),
      y: first.y - value * Math.sin(towards.rise),
      z: first.z - value * flat * Math.cos(towards.turn),
    };
    near(apartAlong(moved, second, towards), 0, 1e-12);
  },
);

property.prop([disc, disc], { numRuns: 60 })("discs in one plane with their axes: as two lines", (a, b) => {
  const [first, second] = [{ ...a, y: 3 * mm }, mirrored({ ...b, y: 3 * mm })];
  const line = ({ x, z, tilt, radius }: Disc) => ({
    ax: x - radius * Math.cos(tilt),
    ay: z + radius * Math.sin(tilt),
    bx: x + radius * Math.cos(tilt),
    by: z - radius * Math.sin(tilt),
  });
  near(discDistance(first, second, start).value, segmentDistance(line(first), line(second)), 1e-8);
});

test("by hand: two level discs in one plane, 30 across and 40 along: 50 less both radii", () => {
  const level = { z: 0, tilt: 0, radius: 20 };
  near(discDistance({ ...level, x: 30, y: 40 }, { ...level, x: 0, y: 0 }, start).value, 10, 1e-9);
});
