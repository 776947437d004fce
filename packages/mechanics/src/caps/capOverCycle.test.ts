import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { counted, falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, kN, near, nearly, refuses } from "../check/support.test-support.ts";
import { capPull, capSlipOverCycle } from "./capOverCycle.ts";
import { capClampRatio } from "./mainCap.ts";

/** A load of one size that goes round once, in steps of a degree. */
const round = (size: number) => {
  const angles = Array.from({ length: 360 }, (_, i) => i * deg);
  return {
    x: Float64Array.from(angles, (angle) => size * Math.sin(angle)),
    y: Float64Array.from(angles, (angle) => size * Math.cos(angle)),
  };
};
const one = (x: number, y: number) => ({ x: Float64Array.of(x), y: Float64Array.of(y) });
const joint = { bolts: 2, preload: 66 * kN, friction: 0.15 };

test("by hand: a firing load onto a cap below, into the block, and along the joint", () => {
  const fires = one(0, -34.57 * kN);
  near(capPull({ load: fires, opening: 180 * deg }), 34.57 * kN, 1e-9);
  near(capPull({ load: fires, opening: 0 }), 0, 1e-9);
  // Along the joint: a half of it pushes the cap, 1/pi of it pulls.
  nearly(capPull({ load: fires, opening: 90 * deg }), (34.57 * kN) / Math.PI);
  nearly(
    capSlipOverCycle({ ...joint, load: fires, opening: 90 * deg }),
    (0.15 * (132 - 34.57 / Math.PI)) / (34.57 / 2),
  );
  expect(capSlipOverCycle({ ...joint, load: one(0, 5 * kN), opening: 0 })).toBe(Number.POSITIVE_INFINITY);
});

test("a load that goes round pulls with all of its size, and twice about is none the worse", () => {
  nearly(capPull({ load: round(20 * kN), opening: 30 * deg }), 20 * kN, 1e-9);
  const slips = (opening: number) => capSlipOverCycle({ ...joint, load: round(20 * kN), opening });
  nearly(slips(0), slips(47 * deg), 1e-9);
});

property.prop([between(-Math.PI, Math.PI), between(kN, 60 * kN)])(
  "what the cap takes is the pressure on its half, summed in small steps",
  (angle, size) => {
    const steps = 20_000;
    let [off, along] = [0, 0];
    for (let k = 0; k < steps; k++) {
      // Over the cap's half of the bearing, from one end of the joint to the other.
      const place = ((k + 0.5) / steps - 0.5) * Math.PI;
      const pressure = Math.max(0, Math.cos(place - angle)) * ((2 * size) / Math.PI);
      off += (pressure * Math.cos(place) * Math.PI) / steps;
      along += (pressure * Math.sin(place) * Math.PI) / steps;
    }
    const load = one(size * Math.sin(angle), size * Math.cos(angle));
    near(capPull({ load, opening: 0 }), off, 1e-6 * size);
    if (Math.abs(along) > 0.01 * size)
      nearly(
        capSlipOverCycle({ ...joint, load, opening: 0 }),
        (0.15 * (132 * kN - off)) / Math.abs(along),
        1e-5,
      );
  },
);

property.prop([
  fc.array(fc.tuple(between(-60 * kN, 60 * kN), between(-60 * kN, 60 * kN)), { minLength: 1, maxLength: 40 }),
  between(-Math.PI, Math.PI),
])("the pull over a cycle is the greatest of the pulls of its moments", (samples, opening) => {
  const load = {
    x: Float64Array.from(samples, ([x]) => x),
    y: Float64Array.from(samples, ([, y]) => y),
  };
  const each = samples.map(([x, y]) => capPull({ load: one(x, y), opening }));
  // Plainly, from where the load points.
  const plain = samples.map(([x, y]) => {
    const from = Math.atan2(x, y) - opening;
    const psi = Math.abs(Math.atan2(Math.sin(from), Math.cos(from)));
    return Math.hypot(x, y) * ((1 - psi / Math.PI) * Math.cos(psi) + Math.sin(psi) / Math.PI);
  });
  expect(capPull({ load, opening })).toBe(Math.max(...each));
  near(capPull({ load, opening }), Math.max(...plain), 1e-9 * kN);
});

test("boundary", () => {
  const load = round(20 * kN);
  refuses(() => capPull({ load, opening: Number.NaN }), "opening");
  for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY])
    refuses(
      () => capPull({ load: { x: Float64Array.of(9, wrong), y: Float64Array.of(9, 0) }, opening: 0 }),
      "load",
    );
  refuses(() => capPull({ load: { x: Float64Array.of(), y: Float64Array.of() }, opening: 0 }), "load");
  refuses(() => capPull({ load: { ...load, y: Float64Array.of(1) }, opening: 0 }), "load");
  refuses(() => capSlipOverCycle({ ...joint, load: one(Number.NaN, 0), opening: 0 }), "load");
  refuses(() => capSlipOverCycle({ ...joint, bolts: 1.5, load, opening: 0 }), "bolts");
  refuses(() => capSlipOverCycle({ ...joint, friction: -0.1, load, opening: 0 }), "friction");
});

solvesBack(capPull, { size: goesAs(1, 5 * kN, 40 * kN), opening: falls(5 * deg, 80 * deg) }, (v) =>
  capPull({ load: one(0, v.size), opening: v.opening }),
);
solvesBack(
  capSlipOverCycle,
  {
    bolts: counted(rises(2, 6)),
    preload: rises(30 * kN, 90 * kN),
    friction: goesAs(1, 0.08, 0.2),
    size: falls(5 * kN, 40 * kN),
  },
  (v) => capSlipOverCycle({ ...v, load: round(v.size), opening: 0 }),
);

const samples = fc
  .array(fc.tuple(between(kN, 60 * kN), between(-Math.PI, Math.PI)), { minLength: 1, maxLength: 12 })
  .map((all) => all.map(([size, angle]) => [size * Math.sin(angle), size * Math.cos(angle)] as const));
property.prop([samples, between(-Math.PI, Math.PI), between(-Math.PI, Math.PI)])(
  "load and cap turned together are the same cap; seen in a mirror too",
  (pairs, opening, turn) => {
    const load = { x: Float64Array.from(pairs, ([x]) => x), y: Float64Array.from(pairs, ([, y]) => y) };
    const turned = {
      x: load.x.map((x, i) => x * Math.cos(turn) + load.y[i]! * Math.sin(turn)),
      y: load.y.map((y, i) => y * Math.cos(turn) - load.x[i]! * Math.sin(turn)),
    };
    const mirrored = { x: load.x.map((x) => -x), y: load.y };
    for (const other of [
      { load: turned, opening: opening + turn },
      { load: mirrored, opening: -opening },
    ]) {
      near(capPull(other), capPull({ load, opening }), 1e-9 * 60 * kN);
      const [there, here] = [other, { load, opening }].map((cap) => capSlipOverCycle({ ...joint, ...cap }));
      if (here! < 1e3) nearly(there!, here!, 1e-6);
    }
  },
);

property.prop([between(20 * kN, 90 * kN), between(10 * kN, 60 * kN)])(
  "one firing load straight onto the cap: the ratio of the firing line",
  (preload, firingLoad) => {
    const firing = { bolts: 2, preload, firingLoad, firingLineAngle: 0 };
    nearly((2 * preload) / capPull({ load: one(0, firingLoad), opening: 0 }), capClampRatio(firing), 1e-9);
  },
);
