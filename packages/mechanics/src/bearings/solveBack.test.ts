import { counted, falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, GPa, kN, MPa, mm, rpm, um } from "../check/support.test-support.ts";
import { bearingClearance, hotBearingClearance } from "./bearingClearance.ts";
import { centrifugalHead } from "./centrifugalHead.ts";
import { axialShift, crankEndPlay, hotCrankEndPlay } from "./crankEndPlay.ts";
import { crushFitPressure, crushInterference, hotInterferenceChange, housingGrowth } from "./crushFit.ts";
import { crushPressure, crushStress } from "./crushPressure.ts";
import { filletRise, shellToFilletClearance } from "./filletRise.ts";
import { oilTemperatureRise, trumplerFilm } from "./filmHeating.ts";
import { finiteBearing, finiteBearingLoad } from "./finiteBearing.ts";
import { finiteFilm } from "./finiteFilm.ts";
import { grooveFlow } from "./grooveFlow.ts";
import { housingExpansion } from "./housingExpansion.ts";
import { oilDensity, vogelViscosity, waltherViscosity } from "./oilViscosity.ts";
import { petroffPower } from "./petroffPower.ts";
import { frictionVariable } from "./reynoldsFilm.ts";
import {
  shortBearingAttitude,
  shortBearingEccentricity,
  shortBearingLoad,
  shortBearingSommerfeld,
} from "./shortBearing.ts";
import { shortBearingMobility } from "./shortBearingMobility.ts";
import { sideClearance } from "./sideClearance.ts";
import { sommerfeld } from "./sommerfeld.ts";
import { filmRatio, steadyFilm } from "./steadyFilm.ts";
import { unitLoad } from "./unitLoad.ts";

const journal = [45 * mm, 60 * mm] as const;
const clearance = [20 * um, 45 * um] as const;
const viscosity = [4e-3, 20e-3] as const;
const speed = [2000 * rpm, 9000 * rpm] as const;
const part = (size: number, expansion: number, temperatureRise: number) => ({
  size,
  expansion,
  temperatureRise,
});

solvesBack(bearingClearance, {
  housingBore: rises(53 * mm, 53.02 * mm),
  shellWall: falls(1.48 * mm, 1.5 * mm),
  journalDiameter: falls(49.95 * mm, 50 * mm),
});
solvesBack(
  hotBearingClearance,
  {
    housingBore: rises(53 * mm, 53.02 * mm),
    housingExpansion: rises(10e-6, 24e-6),
    housingRise: rises(60, 110),
    wall: falls(1.48 * mm, 1.5 * mm),
    wallExpansion: falls(11e-6, 19e-6),
    journal: falls(49.95 * mm, 50 * mm),
    journalExpansion: falls(10e-6, 13e-6),
    journalRise: falls(60, 120),
  },
  (v) =>
    hotBearingClearance({
      housing: part(v.housingBore, v.housingExpansion, v.housingRise),
      shellWall: part(v.wall, v.wallExpansion, 100),
      journal: part(v.journal, v.journalExpansion, v.journalRise),
    }),
);
solvesBack(centrifugalHead, {
  density: goesAs(1, 780, 880),
  angularSpeed: goesAs(2, ...speed),
  journalRadius: rises(22 * mm, 35 * mm),
  leastRadius: falls(1 * mm, 20 * mm),
});
solvesBack(crankEndPlay, {
  journalLength: rises(28 * mm, 28.1 * mm),
  webWidth: falls(22.9 * mm, 23 * mm),
  washerThickness: falls(2.4 * mm, 2.45 * mm),
});
solvesBack(
  hotCrankEndPlay,
  {
    endPlay: rises(0.08 * mm, 0.3 * mm),
    journal: rises(10e-6, 13e-6),
    web: falls(10e-6, 24e-6),
    washer: falls(11e-6, 19e-6),
  },
  (v) =>
    hotCrankEndPlay({
      endPlay: v.endPlay,
      journal: part(28 * mm, v.journal, 90),
      web: part(23 * mm, v.web, 80),
      washer: part(2.4 * mm, v.washer, 90),
    }),
);
solvesBack(
  axialShift,
  {
    block: rises(10e-6, 24e-6),
    blockRise: rises(60, 90),
    crankshaft: falls(10e-6, 13e-6),
    crankRise: falls(60, 110),
  },
  (v) =>
    axialShift({
      block: part(200 * mm, v.block, v.blockRise),
      crankshaft: part(200 * mm, v.crankshaft, v.crankRise),
    }),
);
solvesBack(crushInterference, { crush: goesAs(1, 10 * um, 60 * um) }, (v) => crushInterference(v.crush));
solvesBack(hotInterferenceChange, {
  housingBore: goesAs(1, 48 * mm, 65 * mm),
  shellExpansion: rises(11e-6, 13e-6),
  shellRise: rises(80, 120),
  housingExpansion: falls(20e-6, 24e-6),
  housingRise: falls(70, 110),
});
const shells = { crush: goesAs(1, 20 * um, 60 * um), elasticModulus: goesAs(1, 180 * GPa, 215 * GPa) };
solvesBack(crushStress, { ...shells, housingBore: goesAs(-1, 48 * mm, 65 * mm) });
solvesBack(crushPressure, {
  ...shells,
  housingBore: goesAs(-2, 48 * mm, 65 * mm),
  shellWall: goesAs(1, 1.4 * mm, 2.5 * mm),
});
solvesBack(
  crushFitPressure,
  {
    crush: rises(30 * um, 60 * um),
    interferenceChange: rises(-10 * um, 10 * um),
    housingBore: falls(48 * mm, 60 * mm),
    housingOuterDiameter: rises(70 * mm, 100 * mm),
    shellWall: rises(1.4 * mm, 2.5 * mm),
    housingModulus: rises(70 * GPa, 215 * GPa),
    shellModulus: rises(180 * GPa, 215 * GPa),
  },
  ({ housingModulus, shellModulus, ...sizes }) =>
    crushFitPressure({
      ...sizes,
      housing: { elasticModulus: housingModulus, poissonRatio: 0.3 },
      shell: { elasticModulus: shellModulus, poissonRatio: 0.3 },
    }),
);
solvesBack(
  housingGrowth,
  {
    pressure: goesAs(1, 2 * MPa, 15 * MPa),
    housingBore: rises(48 * mm, 60 * mm),
    housingOuterDiameter: falls(70 * mm, 100 * mm),
    elasticModulus: goesAs(-1, 70 * GPa, 215 * GPa),
    poissonRatio: rises(0.2, 0.35),
  },
  ({ elasticModulus, poissonRatio, ...sizes }) =>
    housingGrowth({ ...sizes, housing: { elasticModulus, poissonRatio } }),
);
solvesBack(filletRise, { filletRadius: rises(2 * mm, 4 * mm), axialDistance: falls(0.2 * mm, 1.8 * mm) });
// A chamfer so deep that the fillet's inner end is what the shell comes near.
solvesBack(shellToFilletClearance, {
  filletRadius: falls(2 * mm, 4 * mm),
  axialDistance: rises(0.2 * mm, 0.8 * mm),
  bearingClearance: rises(40 * um, 90 * um),
  chamferWidth: rises(0.3 * mm, 0.9 * mm),
  chamferDepth: notSolved(4 * mm, 6 * mm, "its mouth is not what the shell comes near"),
});
solvesBack(oilTemperatureRise, {
  frictionPower: goesAs(1, 100, 3000),
  flow: goesAs(-1, 1e-5, 2e-4),
  density: goesAs(-1, 780, 880),
  heatCapacity: goesAs(-1, 1900, 2300),
});
solvesBack(trumplerFilm, { journalDiameter: rises(...journal) }, (v) => trumplerFilm(v.journalDiameter));
solvesBack(grooveFlow, {
  journalDiameter: goesAs(1, ...journal),
  radialClearance: goesAs(3, ...clearance),
  supplyPressure: goesAs(1, 2 * bar, 7 * bar),
  viscosity: goesAs(-1, ...viscosity),
  landLength: goesAs(-1, 6 * mm, 11 * mm),
  eccentricity: rises(0.1, 0.95),
  arc: rises(1, 6),
});
solvesBack(housingExpansion, { block: rises(10e-6, 24e-6), cap: rises(10e-6, 24e-6) });
const sheet = { temperature: falls(320, 370), at40: rises(0.04, 0.12), at100: rises(0.006, 0.014) };
type Sheet = Readonly<Record<keyof typeof sheet, number>>;
const points = ({ temperature, at40, at100 }: Sheet, scale = 1) => ({
  temperature,
  first: { temperature: 313.15, viscosity: scale * at40 },
  second: { temperature: 373.15, viscosity: scale * at100 },
});
solvesBack(vogelViscosity, sheet, (v) => vogelViscosity(points(v)));
solvesBack(waltherViscosity, sheet, (v) => waltherViscosity(points(v, 1e-3)));
solvesBack(oilDensity, { densityAt15: goesAs(1, 840, 890), temperature: falls(290, 420) });
solvesBack(petroffPower, {
  viscosity: goesAs(1, ...viscosity),
  angularSpeed: goesAs(2, ...speed),
  journalRadius: goesAs(3, 22 * mm, 32 * mm),
  length: goesAs(1, 15 * mm, 25 * mm),
  radialClearance: goesAs(-1, ...clearance),
});
solvesBack(frictionVariable, {
  sommerfeld: rises(0.01, 1),
  attitude: rises(0.2, 1.4),
  eccentricity: rises(0.1, 0.9),
});
const bearing = {
  viscosity: goesAs(1, ...viscosity),
  angularSpeed: goesAs(1, ...speed),
  journalDiameter: goesAs(1, ...journal),
  length: goesAs(3, 12 * mm, 22 * mm),
  radialClearance: goesAs(-2, ...clearance),
};
solvesBack(shortBearingLoad, { ...bearing, eccentricity: rises(0.1, 0.95) });
solvesBack(finiteBearingLoad, {
  ...bearing,
  eccentricity: rises(0.1, 0.95),
  journalDiameter: rises(...journal),
  length: rises(12 * mm, 22 * mm),
});
const thinned = {
  load: rises(2 * kN, 15 * kN),
  viscosity: falls(...viscosity),
  angularSpeed: falls(...speed),
  journalDiameter: falls(...journal),
  length: falls(12 * mm, 22 * mm),
  radialClearance: rises(...clearance),
};
solvesBack(shortBearingEccentricity, thinned);
solvesBack(finiteBearing, thinned, (v) => finiteBearing(v).eccentricity, 4);
const film = { eccentricity: falls(0.1, 0.95), lengthRatio: goesAs(-2, 0.2, 0.5) };
solvesBack(shortBearingSommerfeld, film);
solvesBack(finiteFilm, { ...film, lengthRatio: falls(0.2, 1) }, (v) => finiteFilm(v).sommerfeld, 4);
solvesBack(shortBearingAttitude, { eccentricity: falls(0.05, 0.95) }, (v) =>
  shortBearingAttitude(v.eccentricity),
);
solvesBack(
  shortBearingMobility,
  {
    along: falls(-0.8, 0.9),
    across: notSolved(-0.3, 0.3, "the part along the load does not depend on it"),
    lengthRatio: goesAs(-2, 0.2, 0.5),
  },
  (v) => shortBearingMobility(v.along, v.across, v.lengthRatio).along,
);
solvesBack(sideClearance, {
  crankpinLength: rises(44 * mm, 46 * mm),
  rods: counted(falls(1, 2)),
  rodWidth: falls(20 * mm, 21.8 * mm),
});
solvesBack(sommerfeld, {
  viscosity: goesAs(1, ...viscosity),
  angularSpeed: goesAs(1, ...speed),
  unitLoad: goesAs(-1, 5 * MPa, 60 * MPa),
  journalRadius: goesAs(2, 22 * mm, 32 * mm),
  radialClearance: goesAs(-2, ...clearance),
});
solvesBack(steadyFilm, { radialClearance: goesAs(1, ...clearance), eccentricity: falls(0.1, 0.98) });
solvesBack(filmRatio, {
  filmThickness: goesAs(1, 0.5 * um, 5 * um),
  journalRoughness: falls(0.05 * um, 0.3 * um),
  shellRoughness: falls(0.1 * um, 0.6 * um),
});
solvesBack(unitLoad, {
  force: goesAs(1, 5 * kN, 60 * kN),
  journalDiameter: goesAs(-1, ...journal),
  shellLength: goesAs(-1, 12 * mm, 22 * mm),
});
