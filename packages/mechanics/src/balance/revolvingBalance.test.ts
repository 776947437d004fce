import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import type { RevolvingMass } from "./MovingMasses.ts";
import { staticUnbalance, twoPlaneBalance } from "./revolvingBalance.ts";
import { greatestShakingForce } from "./shakingForce.ts";

const mass: RevolvingMass = { mass: 2, radius: 0.05, angle: 0.3, axialPosition: 0.1 };

test("one mass: its own unbalance, balanced opposite in the nearer plane in proportion", () => {
  const found = staticUnbalance([mass]);
  near(found.unbalance, 0.1, 1e-15);
  near(found.angle, 0.3, 1e-15);
  const { first, second } = twoPlaneBalance({ revolving: [mass], firstPlane: 0, secondPlane: 0.4 });
  near(first.unbalance, 0.075, 1e-15);
  near(second.unbalance, 0.025, 1e-15);
  near(first.angle, 0.3 - Math.PI, 1e-14);
  near(second.angle, 0.3 - Math.PI, 1e-14);
});

test("two equal masses opposite each other: static balance, a pure couple for the planes", () => {
  const pair = [mass, { ...mass, angle: 0.3 + Math.PI, axialPosition: -0.1 }];
  near(staticUnbalance(pair).unbalance, 0, 1e-16);
  const { first, second } = twoPlaneBalance({ revolving: pair, firstPlane: -0.2, secondPlane: 0.2 });
  near(first.unbalance, 0.05, 1e-15);
  near(second.unbalance, 0.05, 1e-15);
  near(first.angle, 0.3, 1e-14);
  near(second.angle, 0.3 - Math.PI, 1e-14);
});

test("boundary", () => {
  refuses(() => staticUnbalance([]), "revolving");
  refuses(() => staticUnbalance([{ ...mass, radius: -1 }]), "revolving[0].radius");
  refusesNonFinite(staticUnbalance, [mass]);
  const input = { revolving: [mass], firstPlane: 0, secondPlane: 0.4 };
  refusesNonFinite(twoPlaneBalance, input);
  refuses(() => twoPlaneBalance({ ...input, revolving: [] }), "revolving");
  refuses(() => twoPlaneBalance({ ...input, secondPlane: 0 }), "secondPlane");
});

const masses = fc.array(
  fc.record({
    mass: between(0, 3),
    radius: between(0, 0.1),
    angle: between(-7, 7),
    axialPosition: between(-0.4, 0.4),
  }),
  { minLength: 1, maxLength: 6 },
);
const planes = fc.tuple(between(-0.5, -0.05), between(0.05, 0.5));

property.prop([masses, planes])(
  "with the balance masses in, neither force nor couple is left",
  (revolving, [a, b]) => {
    const { first, second } = twoPlaneBalance({ revolving, firstPlane: a, secondPlane: b });
    const radius = 0.06;
    const added = [first, second].map(({ unbalance, angle }, i) => ({
      mass: unbalance / radius,
      radius,
      angle,
      axialPosition: i === 0 ? a : b,
    }));
    const left = greatestShakingForce({
      reciprocating: [],
      revolving: [...revolving, ...added],
      angularSpeed: 1,
    });
    near(left.force.value, 0, 1e-13);
    near(left.couple.value, 0, 1e-13);
  },
);

property.prop([masses, between(-3, 3)])(
  "turning all masses turns the unbalance with them",
  (revolving, turn) => {
    const before = staticUnbalance(revolving);
    const after = staticUnbalance(revolving.map((one) => ({ ...one, angle: one.angle + turn })));
    near(after.unbalance, before.unbalance, 1e-14);
    near(after.unbalance * Math.cos(after.angle), before.unbalance * Math.cos(before.angle + turn), 1e-14);
    near(after.unbalance * Math.sin(after.angle), before.unbalance * Math.sin(before.angle + turn), 1e-14);
    expect(after.angle).toBeGreaterThanOrEqual(-Math.PI);
    expect(after.angle).toBeLessThanOrEqual(Math.PI);
  },
);
