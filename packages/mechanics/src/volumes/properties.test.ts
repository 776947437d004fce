import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { bar, between, cm3, cranks, mm, near, nearly } from "../check/support.test-support.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { boreArea } from "./boreArea.ts";
import { chamberVolumeChangeByMilling } from "./chamberVolumeChangeByMilling.ts";
import { clearanceVolume, clearanceVolumeForRatio, crownVolumeChangeForStroke } from "./clearanceVolume.ts";
import { compressionPressure, compressionTemperature, crankingPressure } from "./compressionPressure.ts";
import { compressionRatio } from "./compressionRatio.ts";
import { crownVolumeFromFill } from "./crownVolumeFromFill.ts";
import { cylinderVolume, cylinderVolumeAt } from "./cylinderVolumeAt.ts";
import { cylinderVolumeRate } from "./cylinderVolumeRate.ts";
import { deckVolume } from "./deckVolume.ts";
import { gasketVolume } from "./gasketVolume.ts";
import { engineDisplacement, sweptVolume } from "./sweptVolume.ts";
import { topLandVolume } from "./topLandVolume.ts";

const bores = between(40 * mm, 160 * mm);

property.prop([bores, between(30 * mm, 150 * mm), between(7, 16), between(-3 * mm, 3 * mm)])(
  "more dish for a longer stroke keeps the ratio under the same deck",
  (bore, stroke, ratio, strokeChange) => {
    const before = clearanceVolumeForRatio({
      sweptVolume: sweptVolume({ bore, stroke }),
      compressionRatio: ratio,
    });
    const dish = crownVolumeChangeForStroke({ bore, strokeChange, compressionRatio: ratio });
    const longer = sweptVolume({ bore, stroke: stroke + strokeChange });
    nearly(compressionRatio({ sweptVolume: longer, clearanceVolume: before + dish }), ratio, 1e-12);
  },
);

property.prop([bores, between(-1 * mm, 3 * mm), between(0.5 * mm, 2 * mm), between(10 * cm3, 80 * cm3)])(
  "layers under one bore are one layer, and a flat crown fills by the bore alone",
  (bore, deckClearance, compressedThickness, chamber) => {
    const deck = deckVolume({ bore, deckClearance });
    const gasket = gasketVolume({ gasketBore: bore, compressedThickness });
    const both = sweptVolume({ bore, stroke: 1 + deckClearance + compressedThickness }) - boreArea(bore);
    near(deck + gasket, both, 1e-15);
    const parts = { chamber, crown: 0, gasket, deck, topLand: 0, other: 0 };
    near(clearanceVolume(parts) - chamber, both, 1e-15);
    const fillVolume = boreArea(bore) * 5 * mm;
    const fill = { fillVolume, bore, depthBelowDeck: 5 * mm, topLandVolume: 0 };
    near(crownVolumeFromFill(fill), 0, 1e-18);
    // A crown filled through a crevice holds as much less.
    near(crownVolumeFromFill({ ...fill, topLandVolume: 1 * cm3 }), -1 * cm3, 1e-18);
  },
);

property.prop([bores, between(0.1, 0.999), between(1 * mm, 12 * mm)])(
  "a crevice and the land beside it fill the bore",
  (bore, share, topLandHeight) => {
    const topLandDiameter = share * bore;
    const land = sweptVolume({ bore: topLandDiameter, stroke: topLandHeight });
    const crevice = topLandVolume({ bore, topLandDiameter, topLandHeight });
    nearly(crevice + land, sweptVolume({ bore, stroke: topLandHeight }), 1e-12);
  },
);

property.prop([bores, between(30 * mm, 150 * mm)])(
  "an engine is the sum of its cylinders",
  (bore, stroke) => {
    const sum = [3, 5].map((cylinders) => engineDisplacement({ bore, stroke, cylinders }));
    nearly(sum[0]! + sum[1]!, engineDisplacement({ bore, stroke, cylinders: 8 }), 1e-12);
  },
);

property.prop([between(0.3 * bar, 4 * bar), between(2, 16), between(1.01, 1.5), between(250, 450)])(
  "pressure and temperature of a polytropic compression are those of one gas, and going back takes it back",
  (inletPressure, trappedCompressionRatio, polytropicExponent, inletTemperature) => {
    const course = { trappedCompressionRatio, polytropicExponent };
    const pressure = compressionPressure({ inletPressure, ...course });
    const temperature = compressionTemperature({ inletTemperature, ...course });
    // p V / T stays as it was.
    nearly(pressure / trappedCompressionRatio / temperature, inletPressure / inletTemperature, 1e-12);
    nearly(crankingPressure({ ambientPressure: inletPressure, ...course }) + inletPressure, pressure, 1e-12);
    const isothermal = compressionPressure({ inletPressure, ...course, polytropicExponent: 1 + 1e-9 });
    nearly(isothermal, inletPressure * trappedCompressionRatio, 1e-8);
    expect(pressure).toBeGreaterThan(isothermal);
  },
);

property.prop([cranks, bores, between(20 * cm3, 120 * cm3), between(-7, 7)])(
  "the volume stays between its dead centres, repeats, and changes at its rate",
  (crank, bore, least, angle) => {
    const cylinder = { crank, bore, clearanceVolume: least };
    const volumeAt = cylinderVolume(cylinder);
    const greatest = least + sweptVolume({ bore, stroke: pistonStroke(crank) });
    expect(volumeAt(angle)).toBeGreaterThanOrEqual(least * (1 - 1e-12));
    expect(volumeAt(angle)).toBeLessThanOrEqual(greatest * (1 + 1e-12));
    nearly(cylinderVolumeAt({ ...cylinder, angle: angle + 2 * Math.PI }), volumeAt(angle), 1e-12);
    const step = 1e-5;
    const slope = (volumeAt(angle + step) - volumeAt(angle - step)) / (2 * step);
    near(cylinderVolumeRate({ crank, bore, angle }), slope, 1e-6 * greatest);
  },
);

property.prop([between(20e-4, 90e-4), between(0, 3 * mm), between(0, 3 * mm)])(
  "milling twice takes off as much as once",
  (faceArea, first, second) => {
    const off = (milledDepth: number) => chamberVolumeChangeByMilling({ faceArea, milledDepth });
    near(off(first) + off(second), off(first + second), 1e-18);
    expect(off(first)).toBeLessThanOrEqual(0);
  },
);
