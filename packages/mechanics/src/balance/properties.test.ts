import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { angles, between, deg, mm, near, refuses, rpm } from "../check/support.test-support.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
import { anyEngine, exampleCrank } from "./layouts.test-support.ts";
import { requireMovingMasses, requireRevolvingMasses } from "./MovingMasses.ts";
import { staticUnbalance, twoPlaneBalance } from "./revolvingBalance.ts";
import { greatestShakingForce, shakingForce } from "./shakingForce.ts";
import { shakingHarmonic } from "./shakingHarmonic.ts";
import { singleCylinderResidual, singleCylinderResidualAt } from "./singleCylinderResidual.ts";

const mass = goesAs(1, 0.3, 0.9);
const angularSpeed = goesAs(2, 2000 * rpm, 9000 * rpm);
const single = { reciprocatingMass: mass, throwRadius: goesAs(1, 35 * mm, 55 * mm), angularSpeed };
solvesBack(
  singleCylinderResidual,
  { ...single, balanceFactor: falls(0.3, 0.8) },
  (v) => singleCylinderResidual(v).along,
);
solvesBack(
  singleCylinderResidual,
  { ...single, balanceFactor: goesAs(1, 0.3, 0.8) },
  (v) => singleCylinderResidual(v).across,
);
solvesBack(
  singleCylinderResidualAt,
  {
    ...single,
    balanceFactor: notSolved(0.3, 0.8, "it moves force from along to across"),
    crankAngle: notSolved(10 * deg, 80 * deg, "the two parts take turns over the turn"),
  },
  (v) => singleCylinderResidualAt(v).resultant,
);

type One = Readonly<Record<"mass" | "throwRadius" | "rodLength", number>>;
const engineOf = (v: One) => ({
  reciprocating: [
    {
      crank: { throwRadius: v.throwRadius, rodLength: v.rodLength, pinLineOffset: 0 },
      mass: v.mass,
      pinAngle: 0,
      bankAngle: 0,
      axialPosition: 0.1,
    },
  ],
  revolving: [],
});
const cylinder = {
  mass,
  angularSpeed,
  throwRadius: rises(38 * mm, 52 * mm),
  rodLength: falls(130 * mm, 160 * mm),
};
solvesBack(
  shakingForce,
  cylinder,
  (v) => shakingForce({ ...engineOf(v), crankAngle: 0, angularSpeed: v.angularSpeed }).forceY,
);
solvesBack(
  greatestShakingForce,
  cylinder,
  (v) => greatestShakingForce({ ...engineOf(v), angularSpeed: v.angularSpeed }).couple.value,
  2,
);
solvesBack(
  shakingHarmonic,
  cylinder,
  (v) => shakingHarmonic({ ...engineOf(v), order: 2, angularSpeed: v.angularSpeed }).force.greatest,
);
solvesBack(
  accelerationHarmonics,
  { throwRadius: rises(38 * mm, 52 * mm), rodLength: falls(130 * mm, 160 * mm) },
  (v) => accelerationHarmonics({ crank: { ...v, pinLineOffset: 0 }, greatestOrder: 2 })[1]!.cosine,
);
const weight = (v: Readonly<Record<"mass" | "radius", number>>, axialPosition = 0) => ({
  ...v,
  angle: 0.7,
  axialPosition,
});
const slug = { mass: goesAs(1, 0.05, 2), radius: goesAs(1, 20 * mm, 90 * mm) };
solvesBack(staticUnbalance, slug, (v) => staticUnbalance([weight(v)]).unbalance);
solvesBack(
  twoPlaneBalance,
  { ...slug, axialPosition: falls(0.05, 0.35) },
  ({ axialPosition, ...v }) =>
    twoPlaneBalance({ revolving: [weight(v, axialPosition)], firstPlane: 0, secondPlane: 0.4 }).first
      .unbalance,
);

property.prop([between(20 * mm, 80 * mm)])(
  "with an endless rod there is the first order alone",
  (throwRadius) => {
    const crank = { throwRadius, rodLength: 1e9 * throwRadius, pinLineOffset: 0 };
    accelerationHarmonics({ crank, greatestOrder: 4 }).forEach(({ order, cosine, sine }) => {
      near(cosine, order === 1 ? 1 : 0, 1e-8);
      near(sine, 0, 1e-8);
    });
  },
);

property.prop([anyEngine, angles, between(50, 900)])(
  "an engine is the sum of what moves in it, and its force grows with the square of its speed",
  (engine, crankAngle, speed) => {
    const at = (masses: typeof engine, angular = speed) =>
      shakingForce({ ...masses, crankAngle, angularSpeed: angular });
    const parts = [
      ...engine.reciprocating.map((one) => at({ reciprocating: [one], revolving: [] })),
      ...engine.revolving.map((one) => at({ reciprocating: [], revolving: [one] })),
    ];
    const [whole, twice] = [at(engine), at(engine, 2 * speed)];
    for (const part of ["forceX", "forceY", "coupleX", "coupleY"] as const) {
      const sizes = parts.reduce((sum, one) => sum + Math.abs(one[part]), 0);
      near(
        whole[part],
        parts.reduce((sum, one) => sum + one[part], 0),
        1e-12 * sizes + 1e-12,
      );
      near(twice[part], 4 * whole[part], 1e-11 * sizes + 1e-12);
    }
  },
);

property.prop([anyEngine, between(-2, -1e-6)])(
  "a mass below nothing is refused wherever it stands",
  (engine, less) => {
    expect(() => requireMovingMasses(engine)).not.toThrow();
    expect(() => requireRevolvingMasses(engine.revolving)).not.toThrow();
    const [first] = engine.reciprocating;
    refuses(
      () => requireMovingMasses({ ...engine, reciprocating: [{ ...first!, mass: less }] }),
      "reciprocating[0].mass",
    );
    const heavy = { mass: less, radius: 0.05, angle: 0, axialPosition: 0 };
    const at = engine.revolving.length;
    refuses(() => requireRevolvingMasses([...engine.revolving, heavy]), `revolving[${at}].mass`);
    refuses(
      () => requireMovingMasses({ ...engine, revolving: [...engine.revolving, heavy] }),
      `revolving[${at}].mass`,
    );
    const stuck = { ...exampleCrank, rodLength: exampleCrank.throwRadius };
    refuses(
      () => requireMovingMasses({ ...engine, reciprocating: [{ ...first!, crank: stuck }] }),
      "rodLength",
    );
  },
);
