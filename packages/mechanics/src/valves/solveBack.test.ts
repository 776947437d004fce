import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { centredCrank, deg, GPa, kN, MPa, mm, rpm } from "../check/support.test-support.ts";
import { coilBindMargin } from "./coilBindMargin.ts";
import { curtainArea, curtainRatio } from "./curtainRatio.ts";
import { lashGrowth } from "./lashGrowth.ts";
import { lossOfContactSpeed } from "./lossOfContactSpeed.ts";
import { pistonToValveAxial, pistonToValveAxialAt } from "./pistonToValveAxial.ts";
import { pistonToValveRadial, valvePocketRoom } from "./pistonToValveRadial.ts";
import { pushrodBucklingLoad, pushrodReserve } from "./pushrodBuckling.ts";
import { openValveToPiston, shutValveDistance } from "./shutValveDistance.ts";
import { springForce } from "./springForce.ts";
import { springShearStress } from "./springShearStress.ts";
import { springSurgeAngularFrequency, springSurgeOrder } from "./springSurge.ts";
import { valveEquivalentMass } from "./valveEquivalentMass.ts";
import { exhaustCurve, inletCurve } from "./valves.test-support.ts";
import { valveToBore } from "./valveToBore.ts";
import { valveToValve } from "./valveToValve.ts";

const lift = [8 * mm, 13 * mm] as const;
solvesBack(coilBindMargin, {
  installedHeight: rises(38 * mm, 50 * mm),
  greatestLift: falls(...lift),
  solidHeight: falls(22 * mm, 28 * mm),
});
solvesBack(curtainRatio, { lift: goesAs(1, ...lift), valveDiameter: goesAs(-1, 28 * mm, 55 * mm) });
solvesBack(curtainArea, { lift: goesAs(1, ...lift), valveDiameter: goesAs(1, 28 * mm, 55 * mm) });
// A light head over an iron block.
solvesBack(
  lashGrowth,
  {
    head: rises(80 * mm, 120 * mm),
    headExpansion: rises(20e-6, 24e-6),
    headRise: rises(80, 110),
    pushrod: falls(180 * mm, 220 * mm),
    pushrodExpansion: falls(11e-6, 13e-6),
    pushrodRise: falls(80, 100),
    blockExpansion: rises(10e-6, 12e-6),
    blockTemperatureRise: rises(50, 70),
    rockerRatio: goesAs(1, 1.3, 1.8),
  },
  (v) =>
    lashGrowth({
      head: { size: v.head, expansion: v.headExpansion, temperatureRise: v.headRise },
      pushrod: { size: v.pushrod, expansion: v.pushrodExpansion, temperatureRise: v.pushrodRise },
      blockExpansion: v.blockExpansion,
      blockTemperatureRise: v.blockTemperatureRise,
      rockerRatio: v.rockerRatio,
    }),
);
const spring = { seatForce: rises(200, 600), springRate: rises(30e3, 80e3) };
solvesBack(
  lossOfContactSpeed,
  { ...spring, equivalentMass: goesAs(-0.5, 0.1, 0.4) },
  (v) => lossOfContactSpeed({ ...v, curve: inletCurve }).angularSpeed,
  2,
);
solvesBack(springForce, { ...spring, lift: rises(...lift) });
solvesBack(springShearStress, {
  force: goesAs(1, 300, 1500),
  wireDiameter: falls(3.5 * mm, 5.5 * mm),
  meanDiameter: rises(24 * mm, 32 * mm),
});
solvesBack(springSurgeAngularFrequency, {
  wireDiameter: goesAs(1, 3.5 * mm, 5.5 * mm),
  meanDiameter: goesAs(-2, 24 * mm, 32 * mm),
  activeCoils: goesAs(-1, 3.5, 7),
  shearModulus: goesAs(0.5, 75 * GPa, 82 * GPa),
  density: goesAs(-0.5, 7700, 7900),
});
solvesBack(springSurgeOrder, {
  surgeAngularFrequency: goesAs(1, 2000, 5000),
  angularSpeed: goesAs(-1, 2000 * rpm, 9000 * rpm),
});
solvesBack(
  pistonToValveAxial,
  { shutValveDistance: rises(3 * mm, 9 * mm), valveTilt: falls(5 * deg, 25 * deg) },
  (v) => pistonToValveAxial({ crank: centredCrank, curve: inletCurve, ...v }).clearance,
  2,
);
solvesBack(
  pistonToValveRadial,
  {
    pocketRadius: rises(20 * mm, 22 * mm),
    valveRadius: falls(17 * mm, 19 * mm),
    valveTilt: falls(5 * deg, 25 * deg),
  },
  (v) =>
    pistonToValveRadial({
      ...v,
      crank: centredCrank,
      curve: inletCurve,
      shutValveDistance: 4 * mm,
      pocketDepth: 5 * mm,
      pocketOffset: 0,
    })!.clearance,
  2,
);
solvesBack(
  pistonToValveAxialAt,
  { shutValveDistance: rises(3 * mm, 9 * mm), valveTilt: falls(5 * deg, 25 * deg) },
  (v) => pistonToValveAxialAt({ crank: centredCrank, curve: inletCurve, ...v }, 20 * deg),
);
// With the pocket carried past the valve's axis by the falling piston.
solvesBack(valvePocketRoom, {
  pocketRadius: rises(20 * mm, 22 * mm),
  valveRadius: falls(17 * mm, 19 * mm),
  pocketOffset: rises(-0.3 * mm, 0.3 * mm),
  valveTilt: falls(10 * deg, 25 * deg),
  travel: falls(3 * mm, 8 * mm),
});
// Stocky, as pushrods are.
solvesBack(
  pushrodBucklingLoad,
  {
    outerDiameter: rises(8 * mm, 9.5 * mm),
    wall: rises(1 * mm, 1.8 * mm),
    length: falls(160 * mm, 200 * mm),
    elasticModulus: rises(200 * GPa, 215 * GPa),
    yieldStrength: rises(300 * MPa, 450 * MPa),
  },
  (rod) => pushrodBucklingLoad(rod).load,
);
solvesBack(pushrodReserve, {
  bucklingLoad: goesAs(1, 4 * kN, 12 * kN),
  openForce: goesAs(-1, 500, 2000),
  rockerRatio: goesAs(-1, 1.3, 1.8),
  dynamicFactor: goesAs(-1, 1, 2.5),
});
solvesBack(shutValveDistance, {
  deckClearance: rises(-0.5 * mm, 1 * mm),
  gasketThickness: rises(0.8 * mm, 1.6 * mm),
  valveRecess: rises(0.5 * mm, 3 * mm),
  valveTilt: falls(5 * deg, 30 * deg),
  pocketDepth: rises(0, 5 * mm),
});
solvesBack(openValveToPiston, { shutValveDistance: rises(3 * mm, 9 * mm), greatestLift: falls(...lift) });
solvesBack(valveEquivalentMass, {
  valve: rises(0.06, 0.14),
  retainer: rises(0.01, 0.04),
  spring: rises(0.04, 0.12),
  rockerAtValve: rises(0, 0.06),
  follower: rises(0, 0.1),
  pushrod: rises(0.01, 0.08),
  rockerRatio: falls(1, 1.8),
});
solvesBack(
  valveToValve,
  { across: rises(20 * mm, 24 * mm), radius: falls(15 * mm, 18 * mm) },
  (v) =>
    valveToValve({
      inlet: { ...v, along: 0, height: 0, tilt: 5 * deg, curve: inletCurve },
      exhaust: { across: -20 * mm, along: 0, height: 0, tilt: 5 * deg, radius: 15 * mm, curve: exhaustCurve },
    }).clearance,
  1,
);
solvesBack(valveToBore, {
  bore: rises(84 * mm, 100 * mm),
  centreDistance: falls(15 * mm, 22 * mm),
  centreAlong: falls(1 * mm, 18 * mm),
  valveRadius: falls(15 * mm, 20 * mm),
  valveTilt: notSolved(5 * deg, 25 * deg, "it carries the head inwards and shortens it across at once"),
  lift: rises(0, 10 * mm),
});
