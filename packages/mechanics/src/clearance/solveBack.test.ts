import { falls, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { centredCrank, deg, mm } from "../check/support.test-support.ts";
import { counterweightToCase } from "./counterweightToCase.ts";
import { neighbourRodGap } from "./neighbourRodGap.ts";
import { notchRadialDepth, notchWall, notchWidthNeeded, oilRingAboveNotch } from "./notch.ts";
import { pistonToCounterweight } from "./pistonToCounterweight.ts";
import { pistonToPiston } from "./pistonToPiston.ts";
import { rodOffsetByStagger } from "./rodOffsetByStagger.ts";
import { boreHalfChord } from "./rodToCylinderChordClearance.ts";
import { sideFaceDistance } from "./rodToCylinderObstacle.ts";
import { screeningDisc } from "./rodToCylinderScreeningDisc.ts";
import { skirtBelowBore } from "./skirtBelowBore.ts";
import { smallEndSideRoom, smallEndToCrown } from "./smallEnd.ts";

const r = [40 * mm, 52 * mm] as const;
const l = [140 * mm, 160 * mm] as const;
type Centred = Readonly<Record<"throwRadius" | "rodLength", number>>;
const crankOf = ({ throwRadius, rodLength }: Centred) => ({ throwRadius, rodLength, pinLineOffset: 0 });

solvesBack(counterweightToCase, {
  caseRadius: rises(85 * mm, 110 * mm),
  counterweightRadius: falls(70 * mm, 83 * mm),
  mainBearingClearance: falls(0.03 * mm, 0.09 * mm),
});
solvesBack(
  oilRingAboveNotch,
  {
    throwRadius: falls(...r),
    rodLength: rises(...l),
    compressionHeight: rises(26 * mm, 36 * mm),
    ringPackDepth: falls(12 * mm, 20 * mm),
    cylinderBottomHeight: falls(70 * mm, 95 * mm),
    notchHeight: falls(0, 10 * mm),
  },
  ({ throwRadius, rodLength, ...piston }) =>
    oilRingAboveNotch({ crank: crankOf({ throwRadius, rodLength }), ...piston }),
);
solvesBack(notchRadialDepth, {
  bore: falls(86 * mm, 105 * mm),
  sideFaceDistance: falls(9 * mm, 12 * mm),
  notchDepth: rises(2 * mm, 6 * mm),
  distance: rises(17 * mm, 20 * mm),
});
solvesBack(notchWall, { wallThickness: rises(5 * mm, 10 * mm), notchDepth: falls(0, 4 * mm) });
solvesBack(notchWidthNeeded, {
  rodWidth: rises(20 * mm, 27 * mm),
  sideGap: rises(0.5 * mm, 2 * mm),
  axialFloat: rises(0.1 * mm, 0.6 * mm),
  cornerRadius: rises(0, 3 * mm),
});
const face = { bigEndWidth: rises(20 * mm, 27 * mm), planeOffset: rises(0.1 * mm, 13 * mm) };
solvesBack(sideFaceDistance, face, (v) => sideFaceDistance({ ...v, bore: 90 * mm }));
solvesBack(boreHalfChord, {
  bore: rises(86 * mm, 105 * mm),
  bigEndWidth: falls(20 * mm, 27 * mm),
  planeOffset: falls(0.1 * mm, 13 * mm),
});
solvesBack(
  skirtBelowBore,
  {
    throwRadius: rises(...r),
    rodLength: falls(...l),
    skirtDepth: rises(20 * mm, 40 * mm),
    cylinderBottomHeight: rises(70 * mm, 95 * mm),
  },
  ({ throwRadius, rodLength, ...piston }) =>
    skirtBelowBore({ crank: crankOf({ throwRadius, rodLength }), ...piston }),
);
solvesBack(smallEndToCrown, {
  crownUndersideHeight: rises(20 * mm, 28 * mm),
  smallEndRadius: falls(14 * mm, 19 * mm),
});
solvesBack(smallEndSideRoom, {
  bossDistance: rises(24 * mm, 30 * mm),
  smallEndWidth: falls(18 * mm, 23 * mm),
  planeOffset: falls(0.1 * mm, 1 * mm),
  axialFloat: falls(0, 0.6 * mm),
});
// A disc that reaches over the bottom of the cylinder: the way in the plane of the side face.
solvesBack(screeningDisc, {
  throwRadius: falls(48 * mm, 52 * mm),
  bigEndRadius: falls(48 * mm, 52 * mm),
  bore: rises(80 * mm, 88 * mm),
  bigEndWidth: falls(20 * mm, 27 * mm),
  planeOffset: falls(0.1 * mm, 5 * mm),
  cylinderBottomHeight: rises(70 * mm, 80 * mm),
  cylinderAxisOffset: falls(0.1 * mm, 5 * mm),
});
solvesBack(
  pistonToCounterweight,
  {
    throwRadius: falls(...r),
    rodLength: rises(...l),
    lowestPointDepth: falls(15 * mm, 25 * mm),
    counterweightRadius: falls(65 * mm, 75 * mm),
    lowestHalfWidth: notSolved(15 * mm, 30 * mm, "the middle of the edge is nearest, however wide it is"),
    counterweightHalfSpan: notSolved(
      50 * deg,
      80 * deg,
      "a wide counterweight passes under the middle anyhow",
    ),
  },
  ({ throwRadius, rodLength, ...rest }) =>
    pistonToCounterweight({ crank: crankOf({ throwRadius, rodLength }), ...rest }).clearance,
  2,
);
solvesBack(
  pistonToPiston,
  {
    bankAngle: rises(60 * deg, 100 * deg),
    skirtDepth: falls(15 * mm, 30 * mm),
    skirtDiameter: falls(80 * mm, 90 * mm),
  },
  (v) => pistonToPiston({ crank: centredCrank, bankStagger: 0, ...v }).clearance,
  2,
);
solvesBack(
  neighbourRodGap,
  {
    pitch: rises(80 * mm, 120 * mm),
    rodWidth: falls(18 * mm, 30 * mm),
    planeOffset: falls(0, 2 * mm),
  },
  ({ pitch, ...rods }) =>
    neighbourRodGap({ positions: [0, pitch, 2.5 * pitch, 3.5 * pitch], rodsPerPin: 1, ...rods }),
);
// With more stagger than the rods can take up, so that the rods stand furthest off when closest together.
solvesBack(rodOffsetByStagger, {
  bankStagger: rises(50 * mm, 60 * mm),
  crankpinLength: notSolved(
    46 * mm,
    48 * mm,
    "the nearest rods rule, and they touch whatever the pin's length",
  ),
  rodWidth: falls(20 * mm, 22 * mm),
  beamOffset: falls(-2 * mm, 2 * mm),
});
