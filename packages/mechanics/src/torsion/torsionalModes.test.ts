import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { holzerResidual } from "./holzerResidual.ts";
import { torsionalModes } from "./torsionalModes.ts";

const chains = fc.integer({ min: 2, max: 9 }).chain((discs) =>
  fc.record({
    inertias: fc.array(between(0.002, 0.4), { minLength: discs, maxLength: discs }),
    stiffnesses: fc.array(between(1e4, 2e6), { minLength: discs - 1, maxLength: discs - 1 }),
  }),
);

test("two discs, example", () => {
  const modes = torsionalModes({ inertias: [0.1, 0.3], stiffnesses: [2e5] });
  expect(modes.map((mode) => mode.angularFrequency)[0]).toBe(0);
  near(modes[1]!.angularFrequency / (2 * Math.PI), 259.9, 0.05);
  near(modes[1]!.angularFrequency / (2 * Math.PI), 259.8989, 0.00005);
  near(modes[1]!.shape[0]!, 1, 1e-15);
  near(modes[1]!.shape[1]!, -1 / 3, 1e-15);
});

test("equal discs and springs have the frequencies 2 sqrt(k/J) sin(i pi / 2n)", () => {
  const discs = 7;
  const chain = { inertias: Array(discs).fill(0.02), stiffnesses: Array(discs - 1).fill(5e5) };
  const modes = torsionalModes(chain);
  expect(modes).toHaveLength(discs);
  modes.forEach((mode, i) => {
    nearly(mode.angularFrequency, 2 * Math.sqrt(5e5 / 0.02) * Math.sin((i * Math.PI) / (2 * discs)), 1e-12);
  });
});

test("mode i has i nodes and Holzer's table leaves no torque over", () => {
  const chain = { inertias: [0.01, 0.02, 0.02, 0.02, 0.02, 0.15], stiffnesses: [3e5, 6e5, 6e5, 6e5, 9e5] };
  const modes = torsionalModes(chain);
  expect(modes).toHaveLength(6);
  modes.forEach(({ angularFrequency, shape }, i) => {
    expect(shape.filter((twist, disc) => disc > 0 && twist * shape[disc - 1]! < 0)).toHaveLength(i);
    const { torque, twists } = holzerResidual({ chain, angularFrequency });
    const sizes = twists.map((twist, disc) =>
      Math.abs(chain.inertias[disc]! * angularFrequency ** 2 * twist),
    );
    near(torque, 0, 1e-12 * Math.max(...sizes));
    twists.forEach((twist, disc) => {
      near(twist, shape[disc]! / shape[0]!, 1e-11 * Math.max(...twists.map(Math.abs)));
    });
  });
});

test("boundary", () => {
  const chain = { inertias: [0.1, 0.2, 0.3], stiffnesses: [1e5, 2e5] };
  refusesNonFinite(torsionalModes, chain);
  refuses(() => torsionalModes({ inertias: [0.1], stiffnesses: [] }), "inertias");
  refuses(() => torsionalModes({ ...chain, stiffnesses: [1e5] }), "stiffnesses");
  refuses(() => torsionalModes({ ...chain, stiffnesses: [1e5, 0] }), "stiffnesses[1]");
  refuses(() => torsionalModes({ ...chain, inertias: [0.1, -0.2, 0.3] }), "inertias[1]");
});

property.prop([chains])("each mode satisfies K q = omega^2 J q", (chain) => {
  for (const { angularFrequency, shape } of torsionalModes(chain)) {
    const springs = chain.stiffnesses.map((k, i) => k * (shape[i + 1]! - shape[i]!));
    const scale = Math.max(...chain.stiffnesses);
    chain.inertias.forEach((inertia, i) => {
      const balance = (springs[i - 1] ?? 0) - (springs[i] ?? 0) - inertia * angularFrequency ** 2 * shape[i]!;
      near(balance / scale, 0, 1e-12);
    });
  }
});

property.prop([chains])("elastic modes carry no momentum, are orthogonal and reach +1", (chain) => {
  const shapes = torsionalModes(chain).map((mode) => mode.shape);
  const product = (a: readonly number[], b: readonly number[]) =>
    chain.inertias.reduce((sum, inertia, i) => sum + inertia * a[i]! * b[i]!, 0);
  shapes.forEach((a, i) => {
    near(Math.max(...a), 1, 1e-15);
    for (const b of shapes.slice(0, i)) {
      near(product(a, b) / Math.sqrt(product(a, a) * product(b, b)), 0, 1e-9);
    }
  });
});

property.prop([chains])("Holzer's table counts as many frequencies below a speed as were found", (chain) => {
  const found = torsionalModes(chain).map((mode) => mode.angularFrequency);
  found.forEach((lower, i) => {
    const upper = found[i + 1] ?? 2 * lower;
    // Two ends of a shaft alike and far apart have frequencies closer than numbers can tell.
    if (upper - lower < 1e-9 * upper) return;
    const { twists, torque } = holzerResidual({ chain, angularFrequency: (lower + upper) / 2 });
    const sequence = [...twists, -torque];
    expect(sequence.filter((value, at) => at > 0 && value * sequence[at - 1]! < 0)).toHaveLength(i + 1);
  });
});

property.prop([chains, between(0.5, 2)])(
  "frequencies follow sqrt(k/J) when all is scaled",
  (chain, factor) => {
    const scaled = { ...chain, stiffnesses: chain.stiffnesses.map((k) => k * factor) };
    const before = torsionalModes(chain);
    torsionalModes(scaled).forEach((mode, i) => {
      near(
        mode.angularFrequency,
        before[i]!.angularFrequency * Math.sqrt(factor),
        1e-9 * mode.angularFrequency,
      );
    });
  },
);
