import { falls, goesAs, notSolved, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { centredCrank, cm3, deg, GPa, mm, rpm, um } from "../check/support.test-support.ts";
import { compressionHeightNeeded, deckClearance } from "./deckClearance.ts";
import { pistonRock } from "./pistonRock.ts";
import { rodStretch } from "./rodStretch.ts";
import { runningSquishGap, squishGap } from "./squishGap.ts";
import { greatestSquishVelocity, squishVelocity } from "./squishVelocity.ts";
import { stackGrowth } from "./stackGrowth.ts";
import { thermalGrowth } from "./ThermalPart.ts";
import { worstCaseAndRss } from "./worstCaseAndRss.ts";

const mechanism = {
  throwRadius: falls(40 * mm, 52 * mm),
  rodLength: falls(135 * mm, 160 * mm),
  pinLineOffset: rises(0.5 * mm, 12 * mm),
};
solvesBack(
  deckClearance,
  { ...mechanism, deckHeight: rises(210 * mm, 240 * mm), compressionHeight: falls(26 * mm, 38 * mm) },
  ({ deckHeight, compressionHeight, ...crank }) => deckClearance({ crank, deckHeight, compressionHeight }),
);
solvesBack(
  compressionHeightNeeded,
  { ...mechanism, deckHeight: rises(210 * mm, 240 * mm), wanted: falls(-0.5 * mm, 1.5 * mm) },
  ({ deckHeight, wanted, ...crank }) => compressionHeightNeeded({ crank, deckHeight, deckClearance: wanted }),
);
solvesBack(pistonRock, {
  bore: goesAs(1, 70 * mm, 110 * mm),
  skirtClearance: goesAs(1, 20 * um, 120 * um),
  skirtLength: goesAs(-1, 25 * mm, 60 * mm),
});
solvesBack(rodStretch, {
  pistonGroupMass: rises(0.3, 0.7),
  smallEndMass: rises(0.1, 0.25),
  acceleration: goesAs(1, 1e4, 6e4),
  rodLength: goesAs(1, 130 * mm, 170 * mm),
  elasticModulus: goesAs(-1, 70 * GPa, 210 * GPa),
  beamArea: goesAs(-1, 1e-4, 4e-4),
});
solvesBack(squishGap, {
  deckClearance: rises(-0.5 * mm, 1 * mm),
  gasketThickness: rises(0.5 * mm, 1.6 * mm),
});
solvesBack(runningSquishGap, {
  squishGap: rises(0.6 * mm, 1.5 * mm),
  stackGrowth: rises(-0.1 * mm, 0.2 * mm),
  rodStretch: falls(0, 0.2 * mm),
  pistonRock: falls(0, 0.1 * mm),
  rodBearingClearance: falls(30 * um, 80 * um),
  mainBearingClearance: falls(30 * um, 80 * um),
  crankDeflection: falls(0, 0.1 * mm),
});
solvesBack(thermalGrowth, {
  size: goesAs(1, 20 * mm, 250 * mm),
  expansion: goesAs(1, 9e-6, 24e-6),
  temperatureRise: goesAs(1, 20, 250),
});
const band = {
  pistonArea: falls(50e-4, 70e-4),
  edgeLength: goesAs(-1, 100 * mm, 200 * mm),
  gap: falls(0.8 * mm, 1.5 * mm),
  clearanceVolume: rises(50 * cm3, 80 * cm3),
  angularSpeed: goesAs(1, 1000 * rpm, 9000 * rpm),
  bandArea: goesAs(1, 10e-4, 25e-4),
};
solvesBack(
  squishVelocity,
  {
    ...band,
    angle: notSolved(-40 * deg, -2 * deg, "the speed has its greatest value on the way up"),
  },
  ({ angle, ...sizes }) => squishVelocity({ crank: centredCrank, ...sizes }, angle),
);
solvesBack(
  greatestSquishVelocity,
  band,
  (sizes) => greatestSquishVelocity({ crank: centredCrank, ...sizes }).velocity,
  2,
);
const heated = (size: number, expansion: number) => ({ size, expansion, temperatureRise: 90 });
solvesBack(
  stackGrowth,
  {
    block: rises(10e-6, 24e-6),
    crankThrow: falls(10e-6, 13e-6),
    rod: falls(9e-6, 24e-6),
    piston: falls(18e-6, 24e-6),
  },
  ({ block, crankThrow, rod, piston }) =>
    stackGrowth({
      block: heated(227 * mm, block),
      crankThrow: heated(47 * mm, crankThrow),
      rod: heated(144.5 * mm, rod),
      piston: heated(31 * mm, piston),
    }),
);
const tolerances = {
  throw: rises(10 * um, 60 * um),
  rod: rises(10 * um, 60 * um),
  deck: rises(10 * um, 60 * um),
};
const listed = (chain: Readonly<Record<"throw" | "rod" | "deck", number>>) => [
  chain.throw,
  chain.rod,
  chain.deck,
];
solvesBack(worstCaseAndRss, tolerances, (chain) => worstCaseAndRss(listed(chain)).worstCase);
solvesBack(worstCaseAndRss, tolerances, (chain) => worstCaseAndRss(listed(chain)).rss);
