import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { angles, between, mm, near, refuses } from "../check/support.test-support.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
import { anyEngine, exampleCrank } from "./layouts.test-support.ts";
import { requireMovingMasses, requireRevolvingMasses } from "./MovingMasses.ts";
import { shakingForce } from "./shakingForce.ts";

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
