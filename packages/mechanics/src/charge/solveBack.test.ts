import { counted, falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, cm3, kN, MPa, mm, rpm } from "../check/support.test-support.ts";
import {
  densityAltitude,
  dryAirPressure,
  moistAirDensity,
  saturationPressure,
  standardAtmosphere,
} from "./ambientAir.ts";
import { atmosphericCorrection, atmosphericCorrectionIso } from "./atmosphericCorrection.ts";
import { chargeCoolerOutlet, compressorOutletTemperature } from "./chargeTemperature.ts";
import { compressorPower, compressorPressureRatio } from "./compressor.ts";
import { mechanicalEfficiency, thermalEfficiency, volumetricEfficiency } from "./efficiency.ts";
import { frictionByLoad, frictionBySpeed } from "./frictionMeanEffectivePressure.ts";
import { airMassFlow, fuelFlow, injectorDuty, volumeFlow } from "./fuelAndAir.ts";
import { fireRingLineLoad, headClampRatio } from "./headClamp.ts";
import { hoopStress, thickCylinderHoopStress } from "./hoopStress.ts";
import { injectorFlowAt, injectorFlowNeeded } from "./injectorFlow.ts";
import { inletGasSpeed } from "./inletGasSpeed.ts";
import { inletMachIndex } from "./inletMachIndex.ts";
import {
  airDensity,
  brakeMeanEffectivePressure,
  manifoldPressureNeeded,
  meanEffectivePressureFromTorque,
  powerFromMeanEffectivePressure,
  speedOfSound,
  sweptPerSecond,
} from "./meanEffectivePressure.ts";
import { crankPowerFromWheel, torqueFromPower, wheelPowerFromCrank } from "./power.ts";
import { greatestPower, greatestTorque, torqueOnCurve } from "./torqueCurve.ts";

const power = [50e3, 600e3] as const;
const consumption = [220 / 3.6e9, 400 / 3.6e9] as const;
const air = {
  pressure: rises(0.8 * bar, 1.05 * bar),
  temperature: falls(270, 315),
  humidity: falls(0.05, 0.95),
};
const engine = {
  displacement: goesAs(1, 1000 * cm3, 6000 * cm3),
  angularSpeed: goesAs(1, 2000 * rpm, 9000 * rpm),
  revolutionsPerCycle: goesAs(-1, 1, 2),
};
const inverse = {
  displacement: goesAs(-1, 1000 * cm3, 6000 * cm3),
  angularSpeed: goesAs(-1, 2000 * rpm, 9000 * rpm),
  revolutionsPerCycle: goesAs(1, 1, 2),
};

solvesBack(saturationPressure, { temperature: rises(240, 330) }, (input) =>
  saturationPressure(input.temperature),
);
solvesBack(dryAirPressure, air);
solvesBack(moistAirDensity, air);
solvesBack(
  standardAtmosphere,
  { altitude: falls(-500, 4000) },
  (input) => standardAtmosphere(input.altitude).pressure,
);
solvesBack(densityAltitude, { density: falls(0.8, 1.3) }, (input) => densityAltitude(input.density));
solvesBack(atmosphericCorrection, {
  dryPressure: falls(0.8 * bar, 1.02 * bar),
  temperature: rises(270, 320),
});
solvesBack(atmosphericCorrectionIso, {
  dryPressure: goesAs(-1.2, 0.8 * bar, 1.02 * bar),
  temperature: goesAs(0.6, 270, 320),
});
solvesBack(compressorOutletTemperature, {
  inletTemperature: goesAs(1, 270, 320),
  pressureRatio: rises(1.2, 3.5),
  efficiency: falls(0.55, 0.8),
  heatCapacityRatio: rises(1.3, 1.41),
});
solvesBack(chargeCoolerOutlet, {
  inletTemperature: rises(360, 470),
  effectiveness: falls(0.5, 0.9),
  coolantTemperature: rises(280, 330),
});
solvesBack(compressorPressureRatio, {
  manifoldPressure: rises(1.4 * bar, 3.5 * bar),
  ambientPressure: falls(0.8 * bar, 1.03 * bar),
  inletLoss: rises(0, 0.05 * bar),
  outletLoss: rises(0, 0.2 * bar),
});
solvesBack(compressorPower, {
  airMassFlow: goesAs(1, 0.05, 0.7),
  inletTemperature: falls(270, 320),
  outletTemperature: rises(350, 470),
  mechanicalEfficiency: goesAs(-1, 0.8, 0.98),
});
solvesBack(thermalEfficiency, {
  specificFuelConsumption: goesAs(-1, ...consumption),
  heatingValue: goesAs(-1, 20e6, 44e6),
});
solvesBack(volumetricEfficiency, {
  ...inverse,
  airMassFlow: goesAs(1, 0.05, 0.7),
  pressure: goesAs(-1, 0.8 * bar, 3 * bar),
  temperature: goesAs(1, 280, 340),
});
solvesBack(mechanicalEfficiency, {
  brake: goesAs(1, 8 * bar, 15 * bar),
  indicated: goesAs(-1, 15.5 * bar, 22 * bar),
});
solvesBack(frictionBySpeed, { angularSpeed: rises(800 * rpm, 7000 * rpm) }, (input) =>
  frictionBySpeed(input.angularSpeed),
);
solvesBack(frictionByLoad, { peakPressure: rises(30 * bar, 150 * bar), meanPistonSpeed: rises(5, 26) });
solvesBack(fuelFlow, { power: goesAs(1, ...power), specificFuelConsumption: goesAs(1, ...consumption) });
solvesBack(airMassFlow, {
  power: goesAs(1, ...power),
  specificFuelConsumption: goesAs(1, ...consumption),
  airFuelRatio: goesAs(1, 6, 15),
});
solvesBack(volumeFlow, { massFlow: goesAs(1, 0.05, 0.7), density: goesAs(-1, 1, 3) });
solvesBack(injectorDuty, {
  fuelFlow: goesAs(1, 0.005, 0.05),
  injectors: counted(goesAs(-1, 1, 12)),
  injectorFlow: goesAs(-1, 0.003, 0.02),
});
const head = { fasteners: rises(3, 6), preload: rises(50 * kN, 90 * kN) };
solvesBack(headClampRatio, {
  fasteners: goesAs(1, 3, 6),
  preload: goesAs(1, 50 * kN, 90 * kN),
  peakPressure: goesAs(-1, 6 * MPa, 15 * MPa),
  sealDiameter: goesAs(-2, 75 * mm, 115 * mm),
});
solvesBack(fireRingLineLoad, {
  ...head,
  clampShare: goesAs(1, 0.4, 0.8),
  peakPressure: falls(6 * MPa, 12 * MPa),
  sealDiameter: falls(75 * mm, 115 * mm),
});
solvesBack(hoopStress, {
  pressure: goesAs(1, 4 * MPa, 15 * MPa),
  bore: goesAs(1, 70 * mm, 110 * mm),
  wall: goesAs(-1, 2 * mm, 9 * mm),
});
solvesBack(thickCylinderHoopStress, {
  pressure: goesAs(1, 4 * MPa, 15 * MPa),
  bore: rises(70 * mm, 110 * mm),
  wall: falls(2 * mm, 20 * mm),
});
solvesBack(injectorFlowAt, {
  ratedFlow: goesAs(1, 0.003, 0.02),
  ratedPressure: goesAs(-0.5, 2.5 * bar, 4.5 * bar),
  pressure: goesAs(0.5, 2 * bar, 6 * bar),
});
solvesBack(injectorFlowNeeded, {
  fuelFlow: goesAs(1, 0.005, 0.05),
  injectors: counted(goesAs(-1, 1, 12)),
  duty: goesAs(-1, 0.7, 0.95),
});
const inlet = {
  bore: goesAs(2, 70 * mm, 110 * mm),
  valves: counted(goesAs(-1, 1, 3)),
  valveDiameter: goesAs(-2, 28 * mm, 55 * mm),
  meanPistonSpeed: goesAs(1, 5, 26),
};
solvesBack(inletGasSpeed, inlet);
solvesBack(inletMachIndex, {
  ...inlet,
  flowCoefficient: goesAs(-1, 0.25, 0.45),
  speedOfSound: goesAs(-1, 330, 380),
});
solvesBack(sweptPerSecond, engine);
solvesBack(brakeMeanEffectivePressure, { ...inverse, power: goesAs(1, ...power) });
solvesBack(powerFromMeanEffectivePressure, {
  ...engine,
  meanEffectivePressure: goesAs(1, 8 * bar, 30 * bar),
});
solvesBack(airDensity, { pressure: goesAs(1, 0.8 * bar, 3 * bar), temperature: goesAs(-1, 270, 400) });
solvesBack(manifoldPressureNeeded, {
  ...inverse,
  airMassFlow: goesAs(1, 0.05, 0.7),
  temperature: goesAs(1, 290, 380),
  volumetricEfficiency: goesAs(-1, 0.7, 1.15),
});
solvesBack(speedOfSound, { temperature: goesAs(0.5, 250, 400) }, (input) => speedOfSound(input.temperature));
solvesBack(crankPowerFromWheel, { wheelPower: goesAs(1, ...power), drivelineLoss: rises(0.05, 0.25) });
solvesBack(wheelPowerFromCrank, { crankPower: goesAs(1, ...power), drivelineLoss: falls(0.05, 0.25) });
solvesBack(torqueFromPower, { power: goesAs(1, ...power), angularSpeed: goesAs(-1, 2000 * rpm, 9000 * rpm) });
solvesBack(meanEffectivePressureFromTorque, {
  torque: goesAs(1, 50, 900),
  displacement: goesAs(-1, 1000 * cm3, 6000 * cm3),
  revolutionsPerCycle: goesAs(1, 1, 2),
});
const curveUpTo = (lastSpeed: number, lastTorque: number) => [
  { angularSpeed: 3000 * rpm, torque: 300 },
  { angularSpeed: lastSpeed, torque: lastTorque },
];
solvesBack(
  torqueOnCurve,
  {
    angularSpeed: rises(3200 * rpm, 5000 * rpm),
    lastSpeed: falls(5500 * rpm, 8000 * rpm),
    lastTorque: rises(400, 700),
  },
  ({ angularSpeed, lastSpeed, lastTorque }) =>
    torqueOnCurve({ curve: curveUpTo(lastSpeed, lastTorque), angularSpeed }),
);
solvesBack(
  greatestTorque,
  { lastTorque: goesAs(1, 400, 700) },
  ({ lastTorque }) => greatestTorque(curveUpTo(6000 * rpm, lastTorque)).torque,
);
solvesBack(
  greatestPower,
  { lastSpeed: goesAs(1, 4000 * rpm, 8000 * rpm), lastTorque: goesAs(1, 310, 700) },
  ({ lastSpeed, lastTorque }) => greatestPower(curveUpTo(lastSpeed, lastTorque)).power,
);
