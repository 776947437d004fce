import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { bar, between, kN, MPa, near, nearly, rpm } from "../check/support.test-support.ts";
import { compressorOutletTemperature } from "./chargeTemperature.ts";
import { compressorPower, compressorPressureRatio } from "./compressor.ts";
import { mechanicalEfficiency, thermalEfficiency } from "./efficiency.ts";
import { frictionByLoad } from "./frictionMeanEffectivePressure.ts";
import { fuelFlow, injectorDuty, volumeFlow } from "./fuelAndAir.ts";
import { fireRingLineLoad, headClampRatio } from "./headClamp.ts";
import { injectorFlowAt, injectorFlowNeeded } from "./injectorFlow.ts";
import { inletGasSpeed } from "./inletGasSpeed.ts";
import { inletMachIndex } from "./inletMachIndex.ts";
import {
  airDensity,
  brakeMeanEffectivePressure,
  powerFromMeanEffectivePressure,
  speedOfSound,
  sweptPerSecond,
} from "./meanEffectivePressure.ts";
import { crankPowerFromWheel, torqueFromPower, wheelPowerFromCrank } from "./power.ts";

const powers = between(5e3, 900e3);
const speeds = between(500 * rpm, 14_000 * rpm);

property.prop([powers, between(200, 450), between(1, 12)])(
  "what the fuel holds is what the engine gives over its efficiency, and the injectors pass it",
  (power, gramsPerKilowattHour, injectors) => {
    const specificFuelConsumption = gramsPerKilowattHour / 3.6e9;
    const flow = fuelFlow({ power, specificFuelConsumption });
    const efficiency = thermalEfficiency({ specificFuelConsumption, heatingValue: 43e6 });
    nearly(flow * 43e6 * efficiency, power);
    const count = Math.round(injectors);
    const injectorFlow = injectorFlowNeeded({ fuelFlow: flow, injectors: count, duty: 0.85 });
    nearly(injectorDuty({ fuelFlow: flow, injectors: count, injectorFlow }), 0.85);
    nearly(volumeFlow({ massFlow: flow, density: 745 }) * 745, flow);
  },
);

property.prop([between(1 * bar, 6 * bar), between(1 * bar, 6 * bar), between(1 * bar, 6 * bar)])(
  "an injector's flow does not depend on the way to a pressure",
  (rated, between1, wanted) => {
    const to = (ratedFlow: number, ratedPressure: number, pressure: number) =>
      injectorFlowAt({ ratedFlow, ratedPressure, pressure });
    nearly(to(to(0.005, rated, between1), between1, wanted), to(0.005, rated, wanted));
  },
);

property.prop([between(0.5 * bar, 2 * bar), between(0.9 * bar, 1.1 * bar), between(0, 0.5 * bar)])(
  "without losses the ratio is that of the pressures, and losses only raise it",
  (boost, ambientPressure, loss) => {
    const manifoldPressure = ambientPressure + boost;
    const ratio = (inletLoss: number, outletLoss: number) =>
      compressorPressureRatio({ manifoldPressure, ambientPressure, inletLoss, outletLoss });
    nearly(ratio(0, 0), manifoldPressure / ambientPressure);
    expect(ratio(loss, loss)).toBeGreaterThanOrEqual(ratio(0, 0));
  },
);

property.prop([between(1, 4), between(270, 320), between(0.05, 1)])(
  "without a rise of pressure there is no heat and no work",
  (pressureRatio, inletTemperature, efficiency) => {
    const outlet = (ratio: number) =>
      compressorOutletTemperature({
        inletTemperature,
        pressureRatio: ratio,
        efficiency,
        heatCapacityRatio: 1.4,
      });
    nearly(outlet(1), inletTemperature);
    expect(outlet(pressureRatio)).toBeGreaterThanOrEqual(inletTemperature);
    const still = {
      airMassFlow: 0.3,
      inletTemperature,
      outletTemperature: outlet(1),
      mechanicalEfficiency: 0.9,
    };
    near(compressorPower(still), 0, 1e-6);
  },
);

property.prop([powers, speeds, between(0.5e-3, 8e-3)])(
  "torque by speed, and mean pressure by swept volume, are the power",
  (power, angularSpeed, displacement) => {
    nearly(torqueFromPower({ power, angularSpeed }) * angularSpeed, power);
    const engine = { displacement, angularSpeed, revolutionsPerCycle: 2 };
    const meanEffectivePressure = brakeMeanEffectivePressure({ ...engine, power });
    nearly(meanEffectivePressure * sweptPerSecond(engine), power);
    nearly(powerFromMeanEffectivePressure({ ...engine, meanEffectivePressure }), power);
    // A four-stroke's torque is its mean pressure over its displacement by 4 pi.
    nearly(torqueFromPower({ power, angularSpeed }), (meanEffectivePressure * displacement) / (4 * Math.PI));
  },
);

property.prop([powers, between(0, 0.4)])("power at the wheels and back", (crankPower, drivelineLoss) => {
  const wheelPower = wheelPowerFromCrank({ crankPower, drivelineLoss });
  nearly(crankPowerFromWheel({ wheelPower, drivelineLoss }), crankPower);
  expect(wheelPower).toBeLessThanOrEqual(crankPower);
});

property.prop([between(0, 150 * bar), between(0, 28), between(5 * bar, 30 * bar)])(
  "an engine gives what its gas does less its friction",
  (peakPressure, meanPistonSpeed, brake) => {
    const friction = frictionByLoad({ peakPressure, meanPistonSpeed });
    expect(friction).toBeGreaterThan(0);
    const efficiency = mechanicalEfficiency({ brake, indicated: brake + friction });
    nearly(friction, (1 - efficiency) * (brake + friction));
  },
);

property.prop([between(3, 6), between(20 * kN, 90 * kN), between(5 * MPa, 15 * MPa), between(0.07, 0.12)])(
  "clamp left on the whole ring is clamp less lift, and gone when the ratio is 1",
  (fasteners, preload, peakPressure, sealDiameter) => {
    const head = { fasteners, preload, peakPressure, sealDiameter };
    const left = fireRingLineLoad({ ...head, clampShare: 1 }) * Math.PI * sealDiameter;
    const ratio = headClampRatio(head);
    near(left, fasteners * preload * (1 - 1 / ratio), 1e-6);
    near(fireRingLineLoad({ ...head, peakPressure: ratio * peakPressure, clampShare: 0.6 }), 0, 1e-3);
  },
);

property.prop([between(0.06, 0.12), between(0.2, 1), between(1, 30), between(240, 420)])(
  "valves as large as the piston let the gas go at its speed, and the index is that speed over sound's",
  (bore, share, meanPistonSpeed, temperature) => {
    const same = { bore, valves: 1, valveDiameter: bore, meanPistonSpeed };
    nearly(inletGasSpeed(same), meanPistonSpeed);
    const inlet = { ...same, valveDiameter: share * bore };
    // What passes is what the piston sweeps.
    nearly(inletGasSpeed(inlet) * (share * bore) ** 2, meanPistonSpeed * bore ** 2);
    const sound = speedOfSound(temperature);
    nearly(sound ** 2, (1.4 * 1 * bar) / airDensity({ pressure: 1 * bar, temperature }));
    const index = inletMachIndex({ ...inlet, flowCoefficient: 1, speedOfSound: sound });
    nearly(index * sound, inletGasSpeed(inlet));
  },
);
