import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, cranks, deg, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonToPiston } from "./pistonToPiston.ts";

const eight = {
  crank: { throwRadius: 45 * mm, rodLength: 152.4 * mm, pinLineOffset: 0 },
  bankAngle: 90 * deg,
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
    const input = { crank, bankAngle, skirtDepth, skirtDiameter };
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

test("boundary", () => {
  refuses(() => pistonToPiston({ ...eight, bankAngle: 0 }), "bankAngle");
  expect(() => pistonToPiston({ ...eight, crank: { ...eight.crank, throwRadius: 1 } })).toThrow(RangeError);
  refusesNonFinite(pistonToPiston, eight);
});
