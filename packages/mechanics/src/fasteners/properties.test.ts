import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, GPa, kN, MPa, mm, near, nearly, refuses, um } from "../check/support.test-support.ts";
import { boltCompliance, boltStretch, preloadFromStretch } from "./boltStretch.ts";
import { dowelShear } from "./dowelShear.ts";
import { embeddingLoss, thermalPreloadChange, tighteningAngle } from "./joint.ts";
import { pressureConeTangent } from "./pressureZone.ts";
import { threadGeometry } from "./threadGeometry.ts";
import { engagementRatio, threadStripLoad } from "./threadStripLoad.ts";
import { preloadForYieldUse, yieldUse } from "./tighteningStress.ts";
import {
  nutFactor,
  preloadFromTorque,
  requireThread,
  threadTorque,
  torqueForPreload,
} from "./torqueAndPreload.ts";

const preloads = between(kN, 100 * kN);
const segments = fc.array(
  fc.record({
    length: between(5 * mm, 80 * mm),
    area: between(3e-5, 2e-4),
    elasticModulus: between(70 * GPa, 215 * GPa),
  }),
  { minLength: 1, maxLength: 5 },
);

property.prop([segments, preloads])(
  "a bolt gives as its parts in a row do, in any order, and its stretch gives its preload back",
  (parts, preload) => {
    const sum = parts.reduce((all, part) => all + boltCompliance([part]), 0);
    nearly(boltCompliance([...parts].reverse()), sum, 1e-12);
    const stretch = boltStretch({ preload, segments: parts });
    nearly(preloadFromStretch({ stretch, segments: parts }), preload, 1e-12);
    // The energy of the bolt is that of its parts, F^2 l / (2 E A) each.
    const energy = parts.reduce(
      (all, one) => all + (preload ** 2 * one.length) / (2 * one.elasticModulus * one.area),
      0,
    );
    nearly((preload * stretch) / 2, energy, 1e-12);
  },
);

const give = { boltCompliance: 4e-9, clampedCompliance: 1e-9 };
property.prop([between(20 * mm, 150 * mm), between(5e-6, 25e-6), between(-60, 200)])(
  "bolt and parts of one metal and one temperature keep their preload; who grows more is who is swapped",
  (size, expansion, temperatureRise) => {
    const part = { size, expansion, temperatureRise };
    near(thermalPreloadChange({ ...give, clamped: [part], bolt: [part] }), 0, 1e-9);
    const other = { ...part, expansion: 11e-6 };
    const change = thermalPreloadChange({ ...give, clamped: [part], bolt: [other] });
    near(thermalPreloadChange({ ...give, clamped: [other], bolt: [part] }), -change, 1e-9);
  },
);

property.prop([between(0.5 * um, 20 * um), between(0.75 * mm, 2 * mm)])(
  "what settles is made up by turning as far again",
  (embedding, pitch) => {
    const preload = embeddingLoss({ ...give, embedding });
    const angle = tighteningAngle({ ...give, preload, pitch });
    nearly((angle / (2 * Math.PI)) * pitch, embedding, 1e-12);
    // It is the settling alone, by whichever of the two springs it is taken up.
    const swapped = { boltCompliance: give.clampedCompliance, clampedCompliance: give.boltCompliance };
    nearly(embeddingLoss({ ...swapped, embedding }), preload, 1e-12);
  },
);

property.prop([between(6 * mm, 16 * mm), between(0.1, 0.98), between(100 * MPa, 800 * MPa)])(
  "a ring dowel and its core make a solid one",
  (outerDiameter, share, shearStrength) => {
    const innerDiameter = share * outerDiameter;
    const ring = dowelShear({ dowels: 1, outerDiameter, innerDiameter, shearStrength });
    const core = dowelShear({ dowels: 1, outerDiameter: innerDiameter, innerDiameter: 0, shearStrength });
    nearly(ring + core, dowelShear({ dowels: 1, outerDiameter, innerDiameter: 0, shearStrength }), 1e-12);
  },
);

property.prop([
  between(20 * mm, 120 * mm),
  between(12 * mm, 20 * mm),
  between(1, 9),
  fc.constantFrom("nut", "thread"),
])("the cone depends on proportions only, and not on metal far away", (grip, headDiameter, width, into) => {
  const zone = { grip, headDiameter, outerDiameter: width * headDiameter, into };
  const twice = {
    ...zone,
    grip: 2 * grip,
    headDiameter: 2 * headDiameter,
    outerDiameter: 2 * zone.outerDiameter,
  };
  nearly(pressureConeTangent(twice), pressureConeTangent(zone), 1e-12);
  const far = (times: number) => pressureConeTangent({ ...zone, outerDiameter: times * headDiameter });
  nearly(far(30), far(10), 1e-12);
  expect(pressureConeTangent(zone)).toBeLessThanOrEqual(far(10) * (1 + 1e-12));
});

property.prop([between(6 * mm, 16 * mm), between(0.08, 0.2), between(5, 200)])(
  "a nut factor collects all friction, and engagement is counted in diameters",
  (majorDiameter, friction, torque) => {
    const { pitchDiameter } = threadGeometry({ majorDiameter, pitch: 1.25 * mm });
    const screw = {
      pitch: 1.25 * mm,
      pitchDiameter,
      threadFriction: friction,
      headFriction: friction,
      headFrictionDiameter: 1.3 * majorDiameter,
    };
    const preload = preloadFromTorque({ ...screw, torque });
    const factor = nutFactor({ torque, preload, majorDiameter });
    nearly(factor * majorDiameter, torqueForPreload({ ...screw, preload: 1 }), 1e-12);
    const engagement = 1.5 * majorDiameter;
    nearly(engagementRatio({ engagement, majorDiameter }), 1.5, 1e-12);
    // Stripping grows with the square of the size at the same ratio.
    const load = (scale: number) =>
      threadStripLoad({
        majorDiameter: scale * majorDiameter,
        pitch: scale * screw.pitch,
        engagement: scale * engagement,
        shearStrength: 200 * MPa,
      });
    nearly(load(2), 4 * load(1), 1e-12);
  },
);

property.prop([between(6 * mm, 16 * mm), between(0.2, 1), between(300 * MPa, 1400 * MPa)])(
  "without friction and pitch all of the strength is preload; with them less",
  (majorDiameter, use, yieldStrength) => {
    const thread = threadGeometry({ majorDiameter, pitch: 1e-7 * majorDiameter });
    const load = (threadFriction: number) =>
      preloadForYieldUse({ thread, threadFriction, yieldStrength, use });
    nearly(yieldUse({ preload: load(0), area: thread.stressArea, yieldStrength }), use, 1e-9);
    expect(yieldUse({ preload: load(0.1), area: thread.stressArea, yieldStrength })).toBeLessThan(use);
  },
);

property.prop([between(0.5 * mm, 3 * mm), between(5 * mm, 20 * mm), between(0, 0.3), between(-1, 0)])(
  "a thread has a pitch, a diameter and no friction below nothing",
  (pitch, pitchDiameter, threadFriction, less) => {
    const thread = { pitch, pitchDiameter, threadFriction };
    expect(() => requireThread(thread)).not.toThrow();
    refuses(() => requireThread({ ...thread, pitch: less }), "pitch");
    refuses(() => requireThread({ ...thread, pitchDiameter: less }), "pitchDiameter");
    refuses(() => requireThread({ ...thread, threadFriction: less - 1e-9 }), "threadFriction");
    // Without friction the torque does the work of the preload along the pitch.
    const torque = threadTorque({ ...thread, threadFriction: 0, preload: 10 * kN });
    nearly(torque * 2 * Math.PI, 10 * kN * pitch, 1e-12);
  },
);
