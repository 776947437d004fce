import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, mm, near, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import {
  greatestValveDeceleration,
  greatestValveSpeed,
  valveAcceleration,
  valveVelocity,
} from "./valveMotion.ts";
import { constantCurve, exampleLobe, inletCurve, lobes } from "./valves.test-support.ts";

const angularSpeed = 7800 * rpm;

property.prop([lobes, between(1000, 9000)], { numRuns: 30 })(
  "a power of a cosine, by its own derivatives: fastest where tan^2 is 1/(p - 1), hardest held back at its top",
  (lobe, speed) => {
    const curve = standInLiftCurve(lobe);
    const { exponent: p, seatDuration } = curve;
    const rate = Math.PI / seatDuration;
    const at = Math.atan(Math.sqrt(1 / (p - 1)));
    const valve = { curve, angularSpeed: speed * rpm };
    nearly(
      greatestValveSpeed(valve).value,
      lobe.greatestLift * p * rate * Math.cos(at) ** (p - 1) * Math.sin(at) * speed * rpm,
      1e-9,
    );
    const held = greatestValveDeceleration(valve);
    nearly(held.value, lobe.greatestLift * p * rate ** 2 * (speed * rpm) ** 2, 1e-9);
    near(held.angle, lobe.centre, 1e-4);
  },
);

property.prop([between(-60, 280)])(
  "velocity is the slope of the lift in time, acceleration that of velocity",
  (at) => {
    const angle = at * deg;
    const step = 1e-4;
    const valve = { curve: inletCurve, angularSpeed };
    const time = (2 * step) / angularSpeed;
    const lift = (one: number) => inletCurve.at(one).lift;
    near(valveVelocity({ ...valve, angle }), (lift(angle + step) - lift(angle - step)) / time, 1e-3);
    const edge = Math.abs(
      Math.abs(angle - exampleLobe.centre) - standInLiftCurve(exampleLobe).seatDuration / 2,
    );
    if (edge < 5 * deg) return;
    const velocity = (one: number) => valveVelocity({ ...valve, angle: one });
    near(valveAcceleration({ ...valve, angle }), (velocity(angle + step) - velocity(angle - step)) / time, 1);
  },
);

solvesBack(
  valveVelocity,
  { angularSpeed: goesAs(1, 100, 900), angle: rises(112 * deg, 140 * deg) },
  (v) => valveVelocity({ curve: inletCurve, ...v }) * -1,
);
solvesBack(
  valveAcceleration,
  { angularSpeed: goesAs(2, 100, 900), angle: rises(112 * deg, 150 * deg) },
  (v) => valveAcceleration({ curve: inletCurve, ...v }),
);
const lobe = (greatestLift: number) => standInLiftCurve({ ...exampleLobe, greatestLift });
const sizes = { greatestLift: rises(8 * mm, 13 * mm) };
solvesBack(
  greatestValveSpeed,
  { ...sizes, angularSpeed: goesAs(1, 100, 900) },
  (v) => greatestValveSpeed({ curve: lobe(v.greatestLift), angularSpeed: v.angularSpeed }).value,
  4,
);
solvesBack(
  greatestValveDeceleration,
  { ...sizes, angularSpeed: goesAs(2, 100, 900) },
  (v) => greatestValveDeceleration({ curve: lobe(v.greatestLift), angularSpeed: v.angularSpeed }).value,
  4,
);

test("boundary", () => {
  const still = { curve: constantCurve(3 * mm), angularSpeed };
  expect(greatestValveSpeed(still).value).toBe(0);
  expect(greatestValveDeceleration(still).value).toBe(0);
  refuses(() => greatestValveSpeed({ ...still, angularSpeed: Number.NaN }), "angularSpeed");
  refuses(() => valveVelocity({ ...still, angle: Number.POSITIVE_INFINITY }), "angle");
  refuses(() => valveAcceleration({ ...still, angle: Number.NaN }), "angle");
});
