import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, GPa, mm, nearly, refuses, rpm } from "../check/support.test-support.ts";
import { equivalentShaftLength, steppedShaftStiffness } from "./equivalentShaftLength.ts";
import { holzerResidual } from "./holzerResidual.ts";
import { requireTorsionalChain } from "./TorsionalChain.ts";
import { torsionalModes } from "./torsionalModes.ts";

const parts = fc.array(
  fc
    .record({
      length: between(5 * mm, 100 * mm),
      diameter: between(20 * mm, 90 * mm),
      share: between(0, 0.9),
    })
    .map(({ length, diameter, share }) => ({ length, diameter, boreDiameter: share * diameter })),
  { minLength: 1, maxLength: 5 },
);
property.prop([parts, between(20 * mm, 90 * mm), between(25 * GPa, 82 * GPa)])(
  "the equivalent shaft is as stiff as the stepped one, in any order, and a plain solid shaft is its own",
  (stepped, referenceDiameter, shearModulus) => {
    const length = equivalentShaftLength({ segments: stepped, referenceDiameter });
    const plain = [{ length, diameter: referenceDiameter, boreDiameter: 0 }];
    const stiffness = steppedShaftStiffness({ segments: plain, shearModulus });
    nearly(steppedShaftStiffness({ segments: [...stepped].reverse(), shearModulus }), stiffness, 1e-12);
    nearly(equivalentShaftLength({ segments: plain, referenceDiameter }), length, 1e-12);
    // G J / L by hand.
    nearly(stiffness, (shearModulus * (Math.PI / 32) * referenceDiameter ** 4) / length, 1e-12);
  },
);

property.prop([between(0.01, 0.4), between(0.01, 0.4), between(1e4, 2e6), between(100 * rpm, 30_000 * rpm)])(
  "a chain read from its other end is the same chain",
  (first, second, stiffness, angularFrequency) => {
    const chain = { inertias: [first, second, 0.02], stiffnesses: [stiffness, 1e5] };
    const turned = { inertias: [...chain.inertias].reverse(), stiffnesses: [...chain.stiffnesses].reverse() };
    const modes = [chain, turned].map((one) => torsionalModes(one).map((mode) => mode.angularFrequency));
    for (const [i, frequency] of modes[0]!.entries()) nearly(frequency, modes[1]![i]!, 1e-9);
    const [there, back] = [chain, turned].map(
      (one) => holzerResidual({ chain: one, angularFrequency }).torque,
    );
    const size = chain.inertias.reduce((sum, inertia) => sum + inertia, 0) * angularFrequency ** 2;
    const steep = chain.stiffnesses.reduce((all, k) => all * (1 + size / k), 1);
    expect(Math.abs(there! - back!)).toBeLessThanOrEqual(1e-12 * size * steep);
  },
);

property.prop([fc.array(between(0.01, 0.4), { minLength: 2, maxLength: 8 }), between(-10, 0)])(
  "a chain has one spring fewer than discs, each of them above nothing",
  (inertias, less) => {
    const stiffnesses = inertias.slice(1).map(() => 1e5);
    expect(() => requireTorsionalChain({ inertias, stiffnesses })).not.toThrow();
    refuses(() => requireTorsionalChain({ inertias, stiffnesses: [...stiffnesses, 1e5] }), "stiffnesses");
    const at = inertias.length - 1;
    refuses(
      () => requireTorsionalChain({ inertias: inertias.with(at, less), stiffnesses }),
      `inertias[${at}]`,
    );
    const weak = stiffnesses.with(at - 1, less);
    refuses(() => requireTorsionalChain({ inertias, stiffnesses: weak }), `stiffnesses[${at - 1}]`);
  },
);
