import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { GPa, mm } from "../check/support.test-support.ts";
import { criticalSpeeds, criticalsWithin } from "./criticalSpeeds.ts";
import { damperTuning } from "./damperTuning.ts";
import { equivalentShaftLength, steppedShaftStiffness } from "./equivalentShaftLength.ts";
import { holzerResidual } from "./holzerResidual.ts";
import { modalInertia } from "./modalInertia.ts";
import { overlapSection, overlapStiffness } from "./overlapStiffness.ts";
import {
  throwStiffness,
  throwStiffnessCarter,
  throwStiffnessKerWilson,
  throwStiffnessThroughOverlap,
} from "./throwStiffness.ts";
import { torsionalModes } from "./torsionalModes.ts";

solvesBack(
  criticalSpeeds,
  { angularFrequency: goesAs(1, 1000, 4000) },
  (v) => criticalSpeeds({ ...v, cylinders: 4, greatestOrder: 6 })[7]!.angularSpeed,
);
solvesBack(
  criticalsWithin,
  { angularFrequency: goesAs(1, 1000, 1900) },
  (v) => criticalsWithin({ ...v, cylinders: 4, greatestOrder: 2, lowest: 1, highest: 9000 })[0]!.angularSpeed,
);
const ring = { modalInertia: falls(0.035, 0.1), ringInertia: rises(0.002, 0.015) };
const damper = { ...ring, angularFrequency: goesAs(1, 1000, 4000) };
solvesBack(
  damperTuning,
  { ...damper, modalInertia: rises(0.035, 0.1), angularFrequency: goesAs(2, 1000, 4000) },
  (v) => damperTuning(v).stiffness,
);
solvesBack(damperTuning, damper, (v) => damperTuning(v).damping);
const shaft = {
  length: rises(20 * mm, 60 * mm),
  diameter: falls(45 * mm, 70 * mm),
  bore: rises(5 * mm, 25 * mm),
};
const segments = ({ length, diameter, bore }: Readonly<Record<keyof typeof shaft, number>>) => [
  { length, diameter, boreDiameter: bore },
  { length: 20 * mm, diameter: 48 * mm, boreDiameter: 0 },
];
solvesBack(equivalentShaftLength, { ...shaft, referenceDiameter: goesAs(4, 40 * mm, 70 * mm) }, (v) =>
  equivalentShaftLength({ segments: segments(v), referenceDiameter: v.referenceDiameter }),
);
solvesBack(
  steppedShaftStiffness,
  {
    length: falls(20 * mm, 60 * mm),
    diameter: rises(45 * mm, 70 * mm),
    bore: falls(5 * mm, 25 * mm),
    shearModulus: goesAs(1, 65 * GPa, 82 * GPa),
  },
  (v) => steppedShaftStiffness({ segments: segments(v), shearModulus: v.shearModulus }),
);
const oneThrow = {
  journalLength: falls(22 * mm, 32 * mm),
  journalDiameter: rises(50 * mm, 70 * mm),
  journalBore: falls(5 * mm, 20 * mm),
  crankpinLength: falls(20 * mm, 40 * mm),
  crankpinDiameter: rises(42 * mm, 55 * mm),
  crankpinBore: falls(5 * mm, 20 * mm),
  webThickness: rises(15 * mm, 25 * mm),
  webWidth: rises(70 * mm, 100 * mm),
  throwRadius: falls(38 * mm, 52 * mm),
  shearModulus: goesAs(1, 65 * GPa, 82 * GPa),
};
solvesBack(throwStiffnessCarter, {
  ...oneThrow,
  webThickness: notSolved(
    15 * mm,
    25 * mm,
    "a thicker web is stiffer, but lengthens the journal in this formula",
  ),
});
solvesBack(throwStiffnessKerWilson, oneThrow);
solvesBack(throwStiffness, {
  ...oneThrow,
  webThickness: notSolved(15 * mm, 25 * mm, "as in Carter's formula, of which it is half"),
});
const lens = {
  journalDiameter: rises(55 * mm, 70 * mm),
  crankpinDiameter: rises(45 * mm, 54 * mm),
  throwRadius: falls(30 * mm, 45 * mm),
};
const core = { ...lens, webThickness: goesAs(-1, 15 * mm, 25 * mm), shearModulus: oneThrow.shearModulus };
solvesBack(overlapSection, lens, (v) => overlapSection(v).torsionConstant);
solvesBack(overlapSection, lens, (v) => overlapSection(v).area);
solvesBack(overlapStiffness, core);
const { webWidth: _, ...throughOverlap } = { ...oneThrow, ...lens, webThickness: falls(15 * mm, 25 * mm) };
solvesBack(throwStiffnessThroughOverlap, throughOverlap, (v) =>
  throwStiffnessThroughOverlap({ ...v, webWidth: 90 * mm }),
);
const discs = { first: falls(0.01, 0.2), second: falls(0.05, 0.4), stiffness: goesAs(0.5, 1e5, 2e6) };
solvesBack(
  torsionalModes,
  discs,
  (v) => torsionalModes({ inertias: [v.first, v.second], stiffnesses: [v.stiffness] })[1]!.angularFrequency,
);
// Below the first natural frequency, where all discs still turn one way.
solvesBack(
  holzerResidual,
  {
    first: rises(0.01, 0.02),
    second: rises(0.05, 0.1),
    frequency: rises(100, 500),
    stiffness: rises(5e5, 2e6),
  },
  (v) =>
    holzerResidual({
      chain: { inertias: [v.first, v.second], stiffnesses: [v.stiffness] },
      angularFrequency: v.frequency,
    }).torque,
);
solvesBack(modalInertia, { first: rises(0.01, 0.2), second: rises(0.05, 0.4), twist: rises(0.1, 1) }, (v) =>
  modalInertia({ inertias: [v.first, v.second], shape: [1, -v.twist], disc: 0 }),
);
