import { counted, falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, centredCrank, cm3, deg, mm } from "../check/support.test-support.ts";
import { boreArea } from "./boreArea.ts";
import { chamberVolumeChangeByMilling } from "./chamberVolumeChangeByMilling.ts";
import {
  clearanceVolume,
  clearanceVolumeForRatio,
  crownVolumeChangeForStroke,
  crownVolumeForRatio,
} from "./clearanceVolume.ts";
import { compressionPressure, compressionTemperature, crankingPressure } from "./compressionPressure.ts";
import { compressionRatio } from "./compressionRatio.ts";
import { compressionRatioSpread } from "./compressionRatioSpread.ts";
import { crankcaseVolumeSwing } from "./crankcaseVolumeSwing.ts";
import { crownVolumeFromFill } from "./crownVolumeFromFill.ts";
import { cylinderVolumeAt } from "./cylinderVolumeAt.ts";
import { cylinderVolumeRate } from "./cylinderVolumeRate.ts";
import { deckVolume } from "./deckVolume.ts";
import { engineVolume, greatestEngineVolume, sweptTogether } from "./engineVolume.ts";
import { gasketVolume } from "./gasketVolume.ts";
import { millingForRatio } from "./millingForRatio.ts";
import { engineDisplacement, sweptVolume } from "./sweptVolume.ts";
import { topLandVolume } from "./topLandVolume.ts";
import { trappedCompressionRatio, trappedVolume } from "./trappedVolume.ts";

const bore = [70 * mm, 110 * mm] as const;
const swept = [350 * cm3, 700 * cm3] as const;
const clearance = [40 * cm3, 80 * cm3] as const;

solvesBack(boreArea, { bore: goesAs(2, ...bore) }, (input) => boreArea(input.bore));
solvesBack(chamberVolumeChangeByMilling, {
  faceArea: goesAs(1, 30e-4, 80e-4),
  milledDepth: goesAs(1, 0.1 * mm, 2 * mm),
});
solvesBack(clearanceVolume, {
  chamber: rises(30 * cm3, 60 * cm3),
  crown: rises(-8 * cm3, 15 * cm3),
  gasket: rises(4 * cm3, 10 * cm3),
  deck: rises(-2 * cm3, 5 * cm3),
  topLand: rises(0, 1 * cm3),
  other: rises(-1 * cm3, 1 * cm3),
});
solvesBack(crownVolumeForRatio, {
  sweptVolume: rises(...swept),
  compressionRatio: falls(8, 14),
  chamber: falls(30 * cm3, 60 * cm3),
  gasket: falls(4 * cm3, 10 * cm3),
  deck: falls(-2 * cm3, 5 * cm3),
  topLand: falls(0, 1 * cm3),
  other: falls(-1 * cm3, 1 * cm3),
});
solvesBack(clearanceVolumeForRatio, { sweptVolume: goesAs(1, ...swept), compressionRatio: falls(8, 14) });
solvesBack(crownVolumeChangeForStroke, {
  bore: goesAs(2, ...bore),
  strokeChange: goesAs(1, 1 * mm, 10 * mm),
  compressionRatio: falls(8, 14),
});
const compression = { trappedCompressionRatio: rises(5, 12), polytropicExponent: rises(1.2, 1.38) };
solvesBack(compressionPressure, { ...compression, inletPressure: goesAs(1, 0.8 * bar, 3 * bar) });
solvesBack(compressionTemperature, { ...compression, inletTemperature: goesAs(1, 280, 400) });
solvesBack(crankingPressure, { ...compression, ambientPressure: goesAs(1, 0.7 * bar, 1.05 * bar) });
solvesBack(compressionRatio, { sweptVolume: rises(...swept), clearanceVolume: falls(...clearance) });
solvesBack(compressionRatioSpread, {
  sweptVolume: goesAs(1, ...swept),
  clearanceVolume: falls(...clearance),
  chamberSpread: rises(0.1 * cm3, 3 * cm3),
});
solvesBack(
  crankcaseVolumeSwing,
  { bore: goesAs(2, ...bore), throwRadius: rises(30 * mm, 55 * mm) },
  (input) =>
    crankcaseVolumeSwing({
      crank: { ...centredCrank, throwRadius: input.throwRadius },
      bore: input.bore,
      cylinders: [{ pinAngle: 0, bankAngle: 0 }],
    }),
  2,
);
solvesBack(crownVolumeFromFill, {
  fillVolume: rises(30 * cm3, 90 * cm3),
  bore: falls(...bore),
  depthBelowDeck: falls(3 * mm, 10 * mm),
  topLandVolume: falls(0, 1 * cm3),
});
const mechanism = { throwRadius: rises(40 * mm, 52 * mm), rodLength: falls(135 * mm, 160 * mm) };
solvesBack(
  cylinderVolumeAt,
  {
    ...mechanism,
    bore: rises(...bore),
    clearanceVolume: rises(...clearance),
    angle: rises(20 * deg, 160 * deg),
  },
  ({ throwRadius, rodLength, ...cylinder }) =>
    cylinderVolumeAt({ crank: { throwRadius, rodLength, pinLineOffset: 0 }, ...cylinder }),
);
solvesBack(
  cylinderVolumeRate,
  { ...mechanism, bore: goesAs(2, ...bore), angle: rises(15 * deg, 55 * deg) },
  ({ throwRadius, rodLength, ...cylinder }) =>
    cylinderVolumeRate({ crank: { throwRadius, rodLength, pinLineOffset: 0 }, ...cylinder }),
);
const pair = [
  { pinAngle: 0, bankAngle: 0 },
  { pinAngle: Math.PI / 2, bankAngle: 0 },
];
const all = {
  ...mechanism,
  bore: rises(...bore),
  clearanceVolume: rises(...clearance),
};
solvesBack(
  engineVolume,
  { ...all, angle: rises(5 * deg, 80 * deg) },
  ({ throwRadius, rodLength, angle, ...cylinder }) =>
    engineVolume({ crank: { throwRadius, rodLength, pinLineOffset: 0 }, ...cylinder, cylinders: pair })(
      angle,
    ),
);
solvesBack(
  sweptTogether,
  { ...mechanism, bore: goesAs(2, ...bore), angle: rises(5 * deg, 80 * deg) },
  ({ throwRadius, rodLength, angle, bore: size }) =>
    sweptTogether({
      crank: { throwRadius, rodLength, pinLineOffset: 0 },
      bore: size,
      cylinders: pair,
    })(angle),
);
solvesBack(greatestEngineVolume, all, ({ throwRadius, rodLength, ...cylinder }) =>
  greatestEngineVolume({ crank: { throwRadius, rodLength, pinLineOffset: 0 }, ...cylinder, cylinders: pair }),
);
solvesBack(deckVolume, { bore: goesAs(2, ...bore), deckClearance: goesAs(1, 0.1 * mm, 2 * mm) });
solvesBack(gasketVolume, {
  gasketBore: goesAs(2, ...bore),
  compressedThickness: goesAs(1, 0.5 * mm, 2 * mm),
});
// A ratio above what the engine has, so that metal comes off.
solvesBack(millingForRatio, {
  sweptVolume: falls(450 * cm3, 550 * cm3),
  clearanceVolume: rises(60 * cm3, 70 * cm3),
  compressionRatio: rises(11, 13),
  faceArea: goesAs(-1, 30e-4, 80e-4),
});
solvesBack(sweptVolume, { bore: goesAs(2, ...bore), stroke: goesAs(1, 60 * mm, 110 * mm) });
solvesBack(engineDisplacement, {
  bore: goesAs(2, ...bore),
  stroke: goesAs(1, 60 * mm, 110 * mm),
  cylinders: counted(goesAs(1, 1, 12)),
});
solvesBack(topLandVolume, {
  bore: rises(88 * mm, 90 * mm),
  topLandDiameter: falls(86 * mm, 87.5 * mm),
  topLandHeight: goesAs(1, 3 * mm, 10 * mm),
});
const trapped = {
  throwRadius: rises(40 * mm, 52 * mm),
  bore: rises(...bore),
  inletClosing: falls(20 * deg, 90 * deg),
};
solvesBack(trappedVolume, { ...trapped, clearanceVolume: rises(...clearance) }, ({ throwRadius, ...input }) =>
  trappedVolume({ crank: { ...centredCrank, throwRadius }, ...input }),
);
solvesBack(
  trappedCompressionRatio,
  { ...trapped, clearanceVolume: falls(...clearance) },
  ({ throwRadius, ...input }) =>
    trappedCompressionRatio({ crank: { ...centredCrank, throwRadius }, ...input }),
);
