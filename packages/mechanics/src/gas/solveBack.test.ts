import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, cm3, deg, mm, rpm } from "../check/support.test-support.ts";
import { burntShare } from "./burntShare.ts";
import { adiabatic, demoCycle } from "./cycle.test-support.ts";
import { heatForPeakPressure } from "./heatForPeakPressure.ts";
import { ignitionDelay, knockIntegral } from "./knockIntegral.ts";
import { pressureAt, pressureTraceForHeat, pressureTraceForPeak } from "./pressureTrace.ts";
import { grossIndicatedPressure, pressureTraceForWork } from "./pressureTraceForWork.ts";
import { runClosedCycle } from "./runClosedCycle.ts";
import { tracePeak } from "./tracePeak.ts";
import { burningSpeedFactor, wallGasSpeed, wallHeatTransfer } from "./wallHeatTransfer.ts";

solvesBack(
  burntShare,
  {
    start: falls(-30 * deg, -10 * deg),
    duration: falls(50 * deg, 70 * deg),
    efficiencyFactor: rises(4, 7),
    formFactor: falls(1, 3),
    angle: rises(0, 15 * deg),
  },
  ({ angle, ...burning }) => burntShare(burning, angle),
);
solvesBack(ignitionDelay, {
  octane: goesAs(3.402, 80, 110),
  pressure: goesAs(-1.7, 20 * bar, 120 * bar),
  temperature: falls(650, 1000),
});
solvesBack(
  knockIntegral,
  {
    octane: goesAs(-3.402, 80, 110),
    angularSpeed: goesAs(-1, 1500 * rpm, 9000 * rpm),
    chargeTemperature: rises(310, 380),
    heatCapacityRatio: rises(1.28, 1.36),
  },
  (v) => knockIntegral({ ...v, run: demoRun, until: 30 * deg }),
  3,
);
const demoRun = runClosedCycle(demoCycle, 2500);
solvesBack(
  heatForPeakPressure,
  { peak: rises(110 * bar, 160 * bar) },
  (v) => heatForPeakPressure(adiabatic, v.peak),
  2,
);
solvesBack(
  pressureTraceForHeat,
  { heat: rises(500, 3500) },
  (v) => pressureAt(pressureTraceForHeat(demoCycle, v.heat), 20 * deg),
  3,
);
solvesBack(
  pressureTraceForPeak,
  { peak: rises(110 * bar, 160 * bar) },
  (v) => pressureTraceForPeak(demoCycle, v.peak).heat,
  2,
);
solvesBack(
  pressureTraceForWork,
  { indicated: rises(15 * bar, 35 * bar) },
  (v) => pressureTraceForWork(demoCycle, v.indicated).heat,
  2,
);
solvesBack(
  tracePeak,
  { heat: rises(1500, 3500) },
  (v) => tracePeak(pressureTraceForHeat(demoCycle, v.heat)).pressure,
  2,
);
solvesBack(runClosedCycle, { heat: rises(500, 3500) }, (v) => runClosedCycle(demoCycle, v.heat).work, 3);
solvesBack(
  grossIndicatedPressure,
  { heat: rises(500, 3500) },
  (v) => grossIndicatedPressure(pressureTraceForHeat(demoCycle, v.heat), demoCycle),
  3,
);
const reference = {
  pressure: falls(1 * bar, 3 * bar),
  volume: falls(350 * cm3, 600 * cm3),
  temperature: rises(300, 400),
};
solvesBack(
  wallGasSpeed,
  {
    ...reference,
    meanPistonSpeed: rises(5, 26),
    sweptVolume: rises(350 * cm3, 600 * cm3),
    gas: rises(60 * bar, 120 * bar),
    motored: falls(20 * bar, 50 * bar),
  },
  ({ pressure, volume, temperature, gas, motored, ...engine }) =>
    wallGasSpeed({
      ...engine,
      reference: { pressure, volume, temperature },
      pressure: gas,
      motoredPressure: motored,
    }),
);
solvesBack(
  burningSpeedFactor,
  {
    pressure: goesAs(-1, 1 * bar, 3 * bar),
    volume: goesAs(-1, 350 * cm3, 600 * cm3),
    temperature: goesAs(1, 300, 400),
    sweptVolume: goesAs(1, 350 * cm3, 600 * cm3),
  },
  ({ sweptVolume, ...charge }) => burningSpeedFactor({ sweptVolume, reference: charge }),
);
solvesBack(wallHeatTransfer, {
  bore: goesAs(-0.2, 70 * mm, 110 * mm),
  pressure: goesAs(0.8, 10 * bar, 120 * bar),
  temperature: goesAs(-0.55, 500, 2600),
  gasSpeed: goesAs(0.8, 5, 60),
});
