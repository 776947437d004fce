import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, cranks, deg, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonToPiston } from "./pistonToPiston.ts";

const eight = {
  crank: { throwRadius: 45 * mm, rodLength: 152.4 * mm, pinLineOffset: 0 },
  bankAngle: 90 * deg,
  bankStagger: 0,
  skirtDepth: 40 * mm,
  skirtDiameter: 102.9 * mm,
};

test("the worked value, with the crankpin straight down between the banks", () => {
  const { clearance, angle } = pistonToPiston(eight);
  near(clearance / mm, 36.446, 0.0005);
  near(angle / deg, 225, 0.01);
});

test("opposed pistons: the sum of their heights over the crank axis", () => {
  const opposed = { ...eight, bankAngle: Math.PI };
  const { clearance } = pistonToPiston(opposed);
  const { throwRadius: r, rodLength: l } = eight.crank;
  // Both stand at the same height with the pin across, sqrt(l^2 - r^2), and never nearer in sum.
  near(clearance, 2 * (Math.sqrt(l ** 2 - r ** 2) - 40 * mm), 1e-8);
});

property.prop([cranks, between(0.3, 3), between(0.03, 0.12)], { numRuns: 40 })(
  "agrees with corners followed through the block, and mirrored it is the same",
  (crank, bankAngle, skirtDiameter) => {
    const skirtDepth = 0.3 * bottomDeadCentre(crank).height;
    const input = { crank, bankAngle, bankStagger: 0, skirtDepth, skirtDiameter };
    const found = pistonToPiston(input).clearance;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 7200; i++) {
      const pin = (i * Math.PI) / 3600;
      const ways = [1, -1].map((side) => {
        const tilt = (side * bankAngle) / 2;
        const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
        const [px, py] = [r * Math.sin(pin), r * Math.cos(pin)];
        const [ax, ay] = [Math.sin(tilt), Math.cos(tilt)];
        // The pin stands on its line where the rod reaches it: e across, so far along.
        const across = px * ay - py * ax - e;
        const height = px * ax + py * ay + Math.sqrt(l ** 2 - across ** 2) - skirtDepth;
        // The inner lower corner lies half a diameter from the cylinder axis towards the middle plane.
        const corner = height * ax - (side * skirtDiameter * ay) / 2;
        return side * corner;
      });
      least = Math.min(least, ways[0]! + ways[1]!);
    }
    near(found, least, 1e-7);
    const mirrored = { ...input, crank: { ...crank, pinLineOffset: -crank.pinLineOffset } };
    near(pistonToPiston(mirrored).clearance, found, 1e-9);
  },
);

property.prop([between(0, 120), between(0, 20), between(60, 170)], { numRuns: 40 })(
  "a stagger never brings them nearer, and the points of the two rims are no nearer than said",
  (stagger, more, degrees) => {
    const input = { ...eight, bankAngle: degrees * deg, bankStagger: stagger * mm };
    const { clearance } = pistonToPiston(input);
    const wider = pistonToPiston({ ...input, bankStagger: (stagger + more) * mm }).clearance;
    expect(wider).toBeGreaterThanOrEqual(clearance - 1e-9);
    const apart = pistonToPiston({ ...input, bankStagger: 0 }).clearance;
    const radius = eight.skirtDiameter / 2;
    const receded = (u: number) => (radius - Math.sqrt(radius ** 2 - u ** 2)) * Math.cos(input.bankAngle / 2);
    let least = Number.POSITIVE_INFINITY;
    for (let i = -100; i <= 100; i++) {
      for (let j = -100; j <= 100; j++) {
        const [u, v] = [(i / 100) * radius, (j / 100) * radius];
        const across = apart + receded(u) + receded(v);
        least = Math.min(least, Math.hypot(Math.max(0, across), input.bankStagger + u - v));
      }
    }
    if (clearance > 0) near(clearance, least, 0.05 * mm);
  },
);

test("boundary", () => {
  refuses(() => pistonToPiston({ ...eight, bankAngle: 0 }), "bankAngle");
  refuses(() => pistonToPiston({ ...eight, bankStagger: -1 }), "bankStagger");
  expect(() => pistonToPiston({ ...eight, crank: { ...eight.crank, throwRadius: 1 } })).toThrow(RangeError);
  refusesNonFinite(pistonToPiston, eight);
});
