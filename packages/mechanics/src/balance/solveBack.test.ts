import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, mm, rpm } from "../check/support.test-support.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
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
