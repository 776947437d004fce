import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { threadTorque } from "./torqueAndPreload.ts";
import { wedgeThreadTorque } from "./wedgeThreadTorque.ts";

const thread = { pitch: 1.25 * mm, pitchDiameter: 10.188 * mm, threadFriction: 0.12, preload: 66e3 };

property.prop([between(0, 0.2), between(0.05, 0.16)])(
  "lies above the sum of terms, by about a hundredth",
  (threadFriction, lead) => {
    const one = { ...thread, threadFriction, pitch: lead * thread.pitchDiameter };
    const ratio = wedgeThreadTorque(one) / threadTorque(one);
    expect(ratio).toBeGreaterThanOrEqual(1 - 1e-12);
    expect(ratio).toBeLessThan(1.02);
  },
);

property.prop([between(0.01, 0.3)])(
  "is the balance of forces on the flank of an inclined plane",
  (threadFriction) => {
    // A block of unit load pushed up a slope of the lead angle by a level force at the pitch radius; the flank's tilt
    // makes the normal force 1/cos 30° greater. Solved by bisection of the balance along the slope.
    const slope = Math.atan(thread.pitch / (Math.PI * thread.pitchDiameter));
    const along = (push: number) => {
      const normal = Math.cos(slope) + push * Math.sin(slope);
      const friction = (threadFriction / Math.cos(Math.PI / 6)) * normal;
      return push * Math.cos(slope) - Math.sin(slope) - friction;
    };
    let [low, high] = [0, 5];
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (along(middle) < 0) low = middle;
      else high = middle;
    }
    const found = wedgeThreadTorque({ ...thread, threadFriction });
    nearly(found, (low * thread.preload * thread.pitchDiameter) / 2, 1e-9);
  },
);

test("without friction it is the lead alone", () => {
  nearly(
    wedgeThreadTorque({ ...thread, threadFriction: 0 }),
    (thread.preload * thread.pitch) / (2 * Math.PI),
  );
});

property.prop([between(0.02, 0.3)])(
  "is the form of ISO 16047, F/2 (P + 1.154 π µ d2)/(π - 1.154 µ P/d2), up to its rounding of 1/cos 30°",
  (mu) => {
    const { pitch: P, pitchDiameter: d2, preload } = thread;
    const iso = (preload / 2) * ((P + 1.154 * Math.PI * mu * d2) / (Math.PI - (1.154 * mu * P) / d2));
    nearly(wedgeThreadTorque({ ...thread, threadFriction: mu }), iso, 7e-4);
  },
);

test("boundary", () => {
  refuses(() => wedgeThreadTorque({ ...thread, threadFriction: 30 }), "threadFriction");
  refuses(() => wedgeThreadTorque({ ...thread, preload: -1 }), "preload");
  refusesNonFinite(wedgeThreadTorque, thread);
});
