import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, mm, near } from "../check/support.test-support.ts";
import { lobeDistance, lobeProfile, lobeSamples, radiusTowards } from "./lobeProfile.ts";

const TURN = 2 * Math.PI;
/** Lobes of one to three noses on a base circle. */
const radii = fc
  .record({
    base: between(12 * mm, 20 * mm),
    lift: between(2 * mm, 9 * mm),
    noses: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ base, lift, noses }) =>
    Array.from(
      { length: lobeSamples },
      (_, i) => base + (lift * (1 + Math.cos((noses * TURN * i) / lobeSamples))) / 2,
    ),
  );
const camAngles = between(-10, 10);
const reaches = between(5 * mm, 60 * mm);
const ALWAYS = Number.POSITIVE_INFINITY;

property.prop([radii, between(-2000, 2000)])(
  "between two samples a profile reaches as far as a straight line says, and it repeats",
  (all, place) => {
    const at = (i: number) => all[((i % lobeSamples) + lobeSamples) % lobeSamples]!;
    const [below, share] = [Math.floor(place), place - Math.floor(place)];
    near(radiusTowards(all, place), at(below) + share * (at(below + 1) - at(below)), 1e-12);
    near(radiusTowards(all, place + lobeSamples), radiusTowards(all, place), 1e-12);
    expect(radiusTowards(all, below)).toBe(at(below));
  },
);

property.prop([radii])(
  "a profile's points lie as far out as its radii, and none farther than the greatest",
  (all) => {
    const profile = lobeProfile(all);
    all.forEach((radius, i) => {
      near(Math.hypot(profile.x[i]!, profile.y[i]!), radius, 1e-15);
    });
    expect(profile.greatest).toBe(Math.max(...all));
  },
);

property.prop([radii, reaches, camAngles])(
  "the distance of a point is that of the nearest of all chords, with a sign by the side",
  (all, r, angle) => {
    const profile = lobeProfile(all);
    const [px, py] = [r * Math.cos(angle), r * Math.sin(angle)];
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < lobeSamples; i++)
      for (let k = 0; k < 10; k++) {
        const j = (i + 1) % lobeSamples;
        const x = profile.x[i]! + (k / 10) * (profile.x[j]! - profile.x[i]!);
        const y = profile.y[i]! + (k / 10) * (profile.y[j]! - profile.y[i]!);
        least = Math.min(least, Math.hypot(px - x, py - y));
      }
    const found = lobeDistance(profile, r, angle, ALWAYS);
    near(Math.abs(found), least, 0.01 * mm);
    expect(found < 0).toBe(r < radiusTowards(all, (angle / TURN) * lobeSamples));
  },
);

property.prop([radii, reaches, camAngles, fc.integer({ min: 0, max: lobeSamples - 1 })])(
  "turned with its profile a point keeps its distance; a circle is as far away as its radius says",
  (all, r, angle, turned) => {
    const other = lobeProfile(all.map((_, i) => all[(i - turned + lobeSamples) % lobeSamples]!));
    const found = lobeDistance(lobeProfile(all), r, angle, ALWAYS);
    near(lobeDistance(other, r, angle + (turned * TURN) / lobeSamples, ALWAYS), found, 1e-9);
    const round = lobeProfile(all.map(() => all[0]!));
    near(lobeDistance(round, r, angle, ALWAYS), r - all[0]!, 1e-6);
  },
);

property.prop([radii, reaches, camAngles, between(0, 20 * mm)])(
  "beyond a limit a number stands in that lies above the limit and not above the distance",
  (all, r, angle, limit) => {
    const profile = lobeProfile(all);
    const whole = lobeDistance(profile, r, angle, ALWAYS);
    const found = lobeDistance(profile, r, angle, limit);
    if (whole <= limit) expect(found).toBe(whole);
    else {
      expect(found).toBeGreaterThan(limit);
      expect(found).toBeLessThanOrEqual(whole + 1e-12);
    }
  },
);
