import { counted, falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, GPa, kN, MPa, mm, um } from "../check/support.test-support.ts";
import { boltFatigueReserve } from "./boltFatigueReserve.ts";
import { boltCompliance, boltStretch, preloadFromStretch } from "./boltStretch.ts";
import { boltThreadStripLoad, engagementNeeded } from "./boltThreadStripLoad.ts";
import { clampedCompliance } from "./clampedCompliance.ts";
import { dowelShear } from "./dowelShear.ts";
import {
  boltServiceLoad,
  embeddingLoss,
  loadFactor,
  thermalPreloadChange,
  tighteningAngle,
} from "./joint.ts";
import { overloadReserve, separationReserve } from "./jointReserves.ts";
import { preloadFromAngle } from "./preloadFromAngle.ts";
import { preloadRange } from "./preloadRange.ts";
import { pressureConeTangent, pressureZoneCompliance } from "./pressureZone.ts";
import { stressAreaUnified, threadGeometry } from "./threadGeometry.ts";
import { engagementRatio, threadStripLoad } from "./threadStripLoad.ts";
import { preloadForYieldUse, tighteningStress, yieldUse } from "./tighteningStress.ts";
import { nutFactor, preloadFromTorque, threadTorque, torqueForPreload } from "./torqueAndPreload.ts";
import { wedgeThreadTorque } from "./wedgeThreadTorque.ts";

const preload = [15 * kN, 80 * kN] as const;
const major = [8 * mm, 14 * mm] as const;
const pitch = [1 * mm, 2 * mm] as const;
const modulus = [70 * GPa, 215 * GPa] as const;
const cancels = "a finer thread has more turns of as much less height: it cancels out";

solvesBack(boltFatigueReserve, {
  preloadStress: falls(400 * MPa, 700 * MPa),
  amplitude: goesAs(-1, 10 * MPa, 60 * MPa),
  enduranceStrength: rises(40 * MPa, 150 * MPa),
  tensileStrength: rises(1000 * MPa, 1400 * MPa),
});
const bolt = (v: { shank: number; thread: number; area: number; elasticModulus: number }) => [
  { length: v.shank, area: 1.2 * v.area, elasticModulus: v.elasticModulus },
  { length: v.thread, area: v.area, elasticModulus: v.elasticModulus },
];
const segments = {
  shank: rises(30 * mm, 80 * mm),
  thread: rises(10 * mm, 30 * mm),
  area: goesAs(-1, 4e-5, 1.2e-4),
  elasticModulus: goesAs(-1, ...modulus),
};
solvesBack(boltCompliance, segments, (v) => boltCompliance(bolt(v)));
solvesBack(boltStretch, { ...segments, preload: goesAs(1, ...preload) }, (v) =>
  boltStretch({ preload: v.preload, segments: bolt(v) }),
);
solvesBack(
  preloadFromStretch,
  {
    stretch: goesAs(1, 30 * um, 300 * um),
    shank: falls(30 * mm, 80 * mm),
    thread: falls(10 * mm, 30 * mm),
    area: goesAs(1, 4e-5, 1.2e-4),
    elasticModulus: goesAs(1, ...modulus),
  },
  (v) => preloadFromStretch({ stretch: v.stretch, segments: bolt(v) }),
);
const strip = { engagement: goesAs(1, 8 * mm, 25 * mm), shearStrength: goesAs(1, 120 * MPa, 800 * MPa) };
solvesBack(boltThreadStripLoad, { ...strip, majorDiameter: rises(...major), pitch: falls(...pitch) });
solvesBack(threadStripLoad, {
  ...strip,
  majorDiameter: goesAs(1, ...major),
  pitch: notSolved(...pitch, cancels),
});
solvesBack(engagementNeeded, {
  majorDiameter: goesAs(-1, ...major),
  pitch: notSolved(...pitch, cancels),
  force: goesAs(1, ...preload),
  shearStrength: goesAs(-1, 120 * MPa, 800 * MPa),
  bearingShare: goesAs(-1, 0.7, 1),
});
solvesBack(engagementRatio, { engagement: goesAs(1, 8 * mm, 25 * mm), majorDiameter: goesAs(-1, ...major) });
solvesBack(clampedCompliance, {
  grip: rises(20 * mm, 120 * mm),
  diameter: falls(...major),
  elasticModulus: goesAs(-1, ...modulus),
});
solvesBack(dowelShear, {
  dowels: counted(goesAs(1, 1, 4)),
  outerDiameter: rises(9 * mm, 16 * mm),
  innerDiameter: falls(1 * mm, 8 * mm),
  shearStrength: goesAs(1, 200 * MPa, 600 * MPa),
});
const give = { boltCompliance: falls(1e-9, 6e-9), clampedCompliance: falls(0.2e-9, 3e-9) };
solvesBack(loadFactor, { ...give, clampedCompliance: rises(0.2e-9, 3e-9), introduction: goesAs(1, 0.3, 1) });
solvesBack(boltServiceLoad, {
  preload: rises(...preload),
  loadFactor: rises(0.05, 0.4),
  externalLoad: rises(2 * kN, 30 * kN),
});
solvesBack(tighteningAngle, {
  boltCompliance: rises(1e-9, 6e-9),
  clampedCompliance: rises(0.2e-9, 3e-9),
  preload: goesAs(1, ...preload),
  pitch: goesAs(-1, ...pitch),
});
solvesBack(preloadFromAngle, {
  ...give,
  snugPreload: rises(5 * kN, 20 * kN),
  angle: rises(40 * deg, 120 * deg),
  pitch: rises(...pitch),
});
// A light part under a steel bolt, all hotter than they were put together.
solvesBack(
  thermalPreloadChange,
  {
    ...give,
    size: goesAs(1, 30 * mm, 120 * mm),
    partExpansion: rises(19e-6, 24e-6),
    partRise: rises(80, 120),
    boltExpansion: falls(10e-6, 13e-6),
    boltRise: falls(60, 100),
  },
  (v) =>
    thermalPreloadChange({
      boltCompliance: v.boltCompliance,
      clampedCompliance: v.clampedCompliance,
      clamped: [{ size: v.size, expansion: v.partExpansion, temperatureRise: v.partRise }],
      bolt: [{ size: v.size, expansion: v.boltExpansion, temperatureRise: v.boltRise }],
    }),
);
solvesBack(embeddingLoss, { ...give, embedding: goesAs(1, 3 * um, 11 * um) });
const loaded = { jointLoad: goesAs(-1, 5 * kN, 30 * kN) };
solvesBack(separationReserve, { ...loaded, preload: goesAs(1, ...preload), loadFactor: rises(0.05, 0.4) });
solvesBack(overloadReserve, {
  ...loaded,
  preload: falls(20 * kN, 60 * kN),
  loadFactor: goesAs(-1, 0.05, 0.4),
  greatestForce: rises(65 * kN, 100 * kN),
});
solvesBack(
  preloadRange,
  { preload: goesAs(1, ...preload), factor: falls(1.1, 2.5) },
  (v) => preloadRange(v).least,
);
solvesBack(
  preloadRange,
  { preload: goesAs(1, ...preload), factor: rises(1.1, 2.5) },
  (v) => preloadRange(v).greatest,
);
solvesBack(
  pressureZoneCompliance,
  {
    headDiameter: falls(14 * mm, 18 * mm),
    holeDiameter: rises(9 * mm, 12 * mm),
    outerDiameter: falls(19 * mm, 26 * mm),
    tangent: falls(0.3, 0.65),
    upper: rises(30 * mm, 60 * mm),
    lower: rises(30 * mm, 60 * mm),
    upperModulus: falls(...modulus),
    lowerModulus: falls(...modulus),
  },
  ({ upper, lower, upperModulus, lowerModulus, ...zone }) =>
    pressureZoneCompliance({
      ...zone,
      into: "nut",
      layers: [
        { length: upper, elasticModulus: upperModulus },
        { length: lower, elasticModulus: lowerModulus },
      ],
    }),
);
const cone = {
  grip: rises(25 * mm, 120 * mm),
  headDiameter: falls(13 * mm, 20 * mm),
  outerDiameter: rises(22 * mm, 60 * mm),
};
solvesBack(pressureConeTangent, cone, (v) => pressureConeTangent({ ...v, into: "nut" }));
solvesBack(pressureConeTangent, cone, (v) => pressureConeTangent({ ...v, into: "thread" }));
const size = { majorDiameter: rises(...major), pitch: falls(...pitch) };
solvesBack(threadGeometry, size, (v) => threadGeometry(v).stressArea);
solvesBack(stressAreaUnified, size);
solvesBack(
  tighteningStress,
  {
    preload: goesAs(1, ...preload),
    threadFriction: rises(0.08, 0.2),
    majorDiameter: falls(...major),
    pitch: rises(...pitch),
  },
  ({ preload: force, threadFriction, ...thread }) =>
    tighteningStress({ preload: force, threadFriction, thread: threadGeometry(thread) }),
);
solvesBack(
  preloadForYieldUse,
  {
    ...size,
    threadFriction: falls(0.08, 0.2),
    yieldStrength: goesAs(1, 600 * MPa, 1300 * MPa),
    use: goesAs(1, 0.5, 1),
  },
  ({ majorDiameter, pitch: p, ...rest }) =>
    preloadForYieldUse({ ...rest, thread: threadGeometry({ majorDiameter, pitch: p }) }),
);
solvesBack(yieldUse, {
  preload: goesAs(1, ...preload),
  area: goesAs(-1, 4e-5, 1.2e-4),
  yieldStrength: goesAs(-1, 600 * MPa, 1300 * MPa),
});
const thread = {
  pitch: rises(...pitch),
  pitchDiameter: rises(7 * mm, 13 * mm),
  threadFriction: rises(0.08, 0.2),
};
solvesBack(torqueForPreload, {
  ...thread,
  headFriction: rises(0.08, 0.2),
  headFrictionDiameter: rises(11 * mm, 20 * mm),
  preload: goesAs(1, ...preload),
});
solvesBack(preloadFromTorque, {
  pitch: falls(...pitch),
  pitchDiameter: falls(7 * mm, 13 * mm),
  threadFriction: falls(0.08, 0.2),
  headFriction: falls(0.08, 0.2),
  headFrictionDiameter: falls(11 * mm, 20 * mm),
  torque: goesAs(1, 15, 150),
});
solvesBack(threadTorque, { ...thread, preload: goesAs(1, ...preload) });
solvesBack(wedgeThreadTorque, { ...thread, preload: goesAs(1, ...preload) });
solvesBack(nutFactor, {
  torque: goesAs(1, 15, 150),
  preload: goesAs(-1, ...preload),
  majorDiameter: goesAs(-1, ...major),
});
