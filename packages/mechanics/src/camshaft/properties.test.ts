import { test as property } from "@fast-check/vitest";
import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, GPa, mm, near, nearly } from "../check/support.test-support.ts";
import { standInLiftCurve } from "../valves/standInLiftCurve.ts";
import { exampleLobe, lobes } from "../valves/valves.test-support.ts";
import { camContactPressure } from "./camContactPressure.ts";
import { camRetardByMilling } from "./camRetardByMilling.ts";
import { flatFollowerContactTravel, flatFollowerEdgeRoom } from "./flatFollowerEdge.ts";
import { valveEvents } from "./valveEvents.ts";

const contact = {
  force: goesAs(0.5, 300, 4000),
  width: goesAs(-0.5, 8 * mm, 16 * mm),
  camRadius: falls(3 * mm, 20 * mm),
  followerCurvature: rises(20, 150),
  camModulus: rises(100 * GPa, 215 * GPa),
  followerModulus: rises(100 * GPa, 215 * GPa),
  camPoisson: rises(0.2, 0.35),
  followerPoisson: rises(0.2, 0.35),
};
solvesBack(
  camContactPressure,
  contact,
  ({ camModulus, camPoisson, followerModulus, followerPoisson, ...line }) =>
    camContactPressure({
      ...line,
      cam: { elasticModulus: camModulus, poissonRatio: camPoisson },
      follower: { elasticModulus: followerModulus, poissonRatio: followerPoisson },
    }).pressure,
);
solvesBack(camRetardByMilling, {
  removedHeight: goesAs(1, 0.1 * mm, 2 * mm),
  runAngle: falls(5 * deg, 40 * deg),
  crankSprocketRadius: goesAs(-1, 20 * mm, 45 * mm),
});
solvesBack(flatFollowerEdgeRoom, {
  followerDiameter: rises(26 * mm, 40 * mm),
  contactTravel: falls(8 * mm, 18 * mm),
});
solvesBack(
  flatFollowerContactTravel,
  { greatestLift: goesAs(1, 7 * mm, 12 * mm), rockerRatio: goesAs(-1, 1, 1.8) },
  ({ greatestLift, rockerRatio }) => {
    const share = greatestLift / exampleLobe.greatestLift;
    const scaled = (stated: { duration: number; lift: number }) => ({ ...stated, lift: share * stated.lift });
    const [longer, shorter] = [scaled(exampleLobe.longer), scaled(exampleLobe.shorter)];
    const curve = standInLiftCurve({ ...exampleLobe, greatestLift, longer, shorter });
    return flatFollowerContactTravel({ curve, rockerRatio }).travel;
  },
  2,
);
const centre = [100 * deg, 120 * deg] as const;
const duration = [200 * deg, 320 * deg] as const;
const lobe = { inletCentre: falls(...centre), exhaustCentre: falls(...centre) };
solvesBack(
  valveEvents,
  { ...lobe, inletDuration: rises(...duration), exhaustDuration: rises(...duration) },
  (v) => valveEvents(v).overlap,
);
const steady = { inletDuration: 250 * deg, exhaustDuration: 250 * deg };
solvesBack(
  valveEvents,
  { inletCentre: rises(...centre), exhaustCentre: rises(...centre) },
  (v) => valveEvents({ ...v, ...steady }).lobeSeparation,
);

property.prop([lobes, between(20 * mm, 50 * mm)])(
  "a follower as wide as twice the travel is left no room, either side alike",
  (input, followerDiameter) => {
    const { travel: contactTravel } = flatFollowerContactTravel({
      curve: standInLiftCurve(input),
      rockerRatio: 1,
    });
    near(flatFollowerEdgeRoom({ followerDiameter: 2 * contactTravel, contactTravel }), 0, 1e-15);
    const mirrored = standInLiftCurve({ ...input, centre: -input.centre });
    nearly(flatFollowerContactTravel({ curve: mirrored, rockerRatio: 1 }).travel, contactTravel, 1e-9);
    near(
      flatFollowerEdgeRoom({ followerDiameter, contactTravel }) + contactTravel,
      followerDiameter / 2,
      1e-15,
    );
  },
);
