import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, mm, near } from "../check/support.test-support.ts";
import { writeAcrossBesideNotch } from "../clearance/writeAcrossBesideNotch.ts";
import { inLeaningFrame } from "../kinematics/bankTilts.ts";
import { cornerDistance } from "./cornerDistance.ts";
import {
  DISTANCE,
  PLACES,
  STEEP_X,
  STEEP_Y,
  steepDistance,
  writeCorner,
  writeDistance,
  writeFromLeaningFrame,
  X,
  Y,
} from "./SteepDistance.ts";

const places = between(-0.1, 0.1);

property.prop([places, places, between(-1, 1), between(-1, 1)])(
  "a corner is written with the distance to it",
  (dx, dy, steepX, steepY) => {
    const n = new Float64Array(PLACES);
    writeCorner(n, dx, steepX, dy, steepY);
    expect(n[DISTANCE]).toBe(cornerDistance(dx, dy));
    const differs = (at: (step: number) => number) => (at(1e-8) - at(-1e-8)) / 2e-8;
    if (Math.min(Math.abs(dx), Math.abs(dy), Math.abs(dx - dy)) < 1e-6) return;
    near(
      n[STEEP_X]!,
      differs((step) => cornerDistance(dx + steepX * step, dy)),
      1e-6,
    );
    near(
      n[STEEP_Y]!,
      differs((step) => cornerDistance(dx, dy + steepY * step)),
      1e-6,
    );
  },
);

/** A nail with a round head: something with a slope of every direction. */
const nail = steepDistance(
  (n) => {
    const way = Math.hypot(n[X]! - 0.03, n[Y]! - 0.01);
    n[DISTANCE] = way - 0.002;
    n[STEEP_X] = (n[X]! - 0.03) / way;
    n[STEEP_Y] = (n[Y]! - 0.01) / way;
  },
  { least: -0.002 },
);

property.prop([places, places, between(-3, 3)])(
  "a distance seen from a leaning frame is the same, its slope turned; differences give that slope too",
  (x, y, tilt) => {
    expect(nail.least).toBe(-0.002);
    near(nail(x, y), Math.hypot(x - 0.03, y - 0.01) - 0.002, 1e-12);
    const leaning = steepDistance(writeFromLeaningFrame(nail.write, tilt), {});
    const there = inLeaningFrame({ x, y }, tilt);
    near(leaning(there.x, there.y), nail(x, y), 1e-12);
    if (leaning(x, y) < 1 * mm) return;
    const [own, differs] = [new Float64Array(PLACES), new Float64Array(PLACES)];
    for (const n of [own, differs]) [n[X], n[Y]] = [x, y];
    leaning.write(own);
    writeDistance((px, py) => leaning(px, py))(differs);
    for (const place of [X, Y, DISTANCE, STEEP_X, STEEP_Y]) near(own[place]!, differs[place]!, 1e-6);
  },
);

property.prop([
  between(0, 60 * mm),
  between(35 * mm, 55 * mm),
  between(1 * mm, 30 * mm),
  between(1 * mm, 60 * mm),
])(
  "beside a notch the nearest metal is that of the bore's circle, sampled, beyond half the width",
  (across, radius, face, halfWidth) => {
    const n = new Float64Array(PLACES);
    writeAcrossBesideNotch(n, across, radius, face, halfWidth);
    const inside = across * across + face * face < radius * radius;
    if (inside && halfWidth < radius) {
      let least = Number.POSITIVE_INFINITY;
      for (let k = 0; k <= 20_000; k++) {
        // Along the circle beside the notch, then along the side of the notch outwards.
        const z = halfWidth + (k / 20_000) * (radius - halfWidth);
        const x = Math.sqrt(Math.max(0, radius * radius - z * z));
        least = Math.min(least, Math.hypot(x - across, z - face));
        const out = Math.sqrt(radius * radius - halfWidth * halfWidth) + (k / 20_000) * 60 * mm;
        if (face < halfWidth) least = Math.min(least, Math.hypot(out - across, halfWidth - face));
      }
      // A face beside the notch sees the circle only; the flat samples along the axis are coarse near its end.
      if (face < halfWidth) near(n[DISTANCE]!, least, 2e-5);
      else near(n[DISTANCE]!, Math.max(halfWidth - face, radius - Math.hypot(across, face)), 1e-12);
    }
    const [less, more] = [new Float64Array(PLACES), new Float64Array(PLACES)];
    if (across < 1e-6 || Math.abs(radius - Math.hypot(across, face) - halfWidth + face) < 1e-6) return;
    writeAcrossBesideNotch(less, across - 1e-8, radius, face, halfWidth);
    writeAcrossBesideNotch(more, across + 1e-8, radius, face, halfWidth);
    near(n[STEEP_X]!, (more[DISTANCE]! - less[DISTANCE]!) / 2e-8, 1e-4);
  },
);
