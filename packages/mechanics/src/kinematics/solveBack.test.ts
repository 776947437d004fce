import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, mm, rpm } from "../check/support.test-support.ts";
import { bankTilts } from "./bankTilts.ts";
import { crankAngleOfHeight } from "./crankAngleOfHeight.ts";
import { bottomDeadCentre, topDeadCentre } from "./deadCentres.ts";
import { dwellAtTopDeadCentre } from "./dwellAtTopDeadCentre.ts";
import { greatestPistonAcceleration } from "./greatestPistonAcceleration.ts";
import { greatestPistonSpeed } from "./greatestPistonSpeed.ts";
import { localCrankAngle } from "./localCrankAngle.ts";
import { meanPistonSpeed } from "./meanPistonSpeed.ts";
import { pinHeight } from "./pinHeight.ts";
import { pinLineOffset } from "./pinLineOffset.ts";
import { pistonAcceleration } from "./pistonAcceleration.ts";
import { pistonStroke } from "./pistonStroke.ts";
import { pistonTravel } from "./pistonTravel.ts";
import { pistonVelocity } from "./pistonVelocity.ts";
import { largestRodAngle, rodAngle } from "./rodAngle.ts";
import { rodRatio } from "./rodRatio.ts";

const r = [40 * mm, 52 * mm] as const;
const l = [135 * mm, 160 * mm] as const;
const e = [0.5 * mm, 12 * mm] as const;
const speed = [2000 * rpm, 9000 * rpm] as const;
type Centred = Readonly<Record<"throwRadius" | "rodLength", number>>;
const centred = ({ throwRadius, rodLength }: Centred) => ({ throwRadius, rodLength, pinLineOffset: 0 });

solvesBack(bankTilts, { bankAngle: goesAs(1, 15 * deg, 180 * deg) }, (v) => bankTilts(v.bankAngle)[0]!);
solvesBack(localCrankAngle, {
  crankAngle: rises(-4, 4),
  pinAngle: rises(-4, 4),
  bankAngle: falls(-1, 1),
});
solvesBack(meanPistonSpeed, { stroke: goesAs(1, 60 * mm, 110 * mm), angularSpeed: goesAs(1, ...speed) });
solvesBack(pinLineOffset, { cylinderAxisOffset: rises(-5 * mm, 12 * mm), pinOffset: falls(-1 * mm, 1 * mm) });
solvesBack(rodRatio, { rodLength: goesAs(1, ...l), throwRadius: goesAs(-1, ...r) });
solvesBack(
  topDeadCentre,
  { throwRadius: rises(...r), rodLength: rises(...l), pinLineOffset: falls(...e) },
  (v) => topDeadCentre(v).height,
);
solvesBack(
  topDeadCentre,
  { throwRadius: falls(...r), rodLength: falls(...l), pinLineOffset: rises(...e) },
  (v) => topDeadCentre(v).angle,
);
solvesBack(
  bottomDeadCentre,
  { throwRadius: falls(...r), rodLength: rises(...l), pinLineOffset: falls(...e) },
  (v) => bottomDeadCentre(v).height,
);
// An offset makes the stroke longer, the more so the shorter the rod.
const longer = { throwRadius: rises(...r), rodLength: falls(...l), pinLineOffset: rises(...e) };
solvesBack(pistonStroke, longer, pistonStroke);
solvesBack(largestRodAngle, longer, largestRodAngle);
solvesBack(
  rodAngle,
  {
    throwRadius: rises(...r),
    rodLength: falls(...l),
    pinLineOffset: falls(...e),
    angle: rises(25 * deg, 80 * deg),
  },
  ({ angle, ...crank }) => rodAngle(crank, angle),
);
solvesBack(
  pinHeight,
  { throwRadius: rises(...r), rodLength: rises(...l), angle: falls(10 * deg, 60 * deg) },
  (v) => pinHeight(centred(v), v.angle),
);
const onTheWayDown = { throwRadius: rises(...r), rodLength: falls(...l), angle: rises(15 * deg, 55 * deg) };
solvesBack(pistonTravel, onTheWayDown, (v) => pistonTravel(centred(v), v.angle));
solvesBack(
  pistonVelocity,
  { ...onTheWayDown, angularSpeed: goesAs(1, ...speed) },
  (v) => -pistonVelocity(centred(v), v.angle, v.angularSpeed),
);
solvesBack(
  pistonAcceleration,
  {
    throwRadius: falls(...r),
    rodLength: rises(...l),
    angle: rises(10 * deg, 45 * deg),
    angularSpeed: goesAs(2, ...speed),
  },
  (v) => pistonAcceleration(centred(v), v.angle, v.angularSpeed),
);
const fastest = { throwRadius: rises(...r), rodLength: falls(...l) };
solvesBack(
  greatestPistonSpeed,
  { ...fastest, angularSpeed: goesAs(1, ...speed) },
  (v) => greatestPistonSpeed(centred(v), v.angularSpeed).speed,
  2,
);
solvesBack(
  greatestPistonAcceleration,
  { ...fastest, angularSpeed: goesAs(2, ...speed) },
  (v) => greatestPistonAcceleration(centred(v), v.angularSpeed).acceleration,
  2,
);
// Above the height at which a longer throw carries the pin lower.
solvesBack(
  crankAngleOfHeight,
  {
    throwRadius: rises(40 * mm, 50 * mm),
    rodLength: rises(140 * mm, 150 * mm),
    height: falls(162 * mm, 174 * mm),
  },
  (v) => crankAngleOfHeight(centred(v), v.height, "down"),
);
solvesBack(
  dwellAtTopDeadCentre,
  { throwRadius: falls(...r), rodLength: rises(...l), travel: rises(0.5 * mm, 20 * mm) },
  (v) => dwellAtTopDeadCentre(centred(v), v.travel),
);
