import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { camContactPressure } from "../camshaft/camContactPressure.ts";
import { capClampRatio, capSlipRatio } from "../caps/mainCap.ts";
import { pistonToCounterweight } from "../clearance/pistonToCounterweight.ts";
import { crankingTorque } from "../crankshaft/crankingTorque.ts";
import { discStress } from "../crankshaft/discStress.ts";
import { pinBendingStress, pinOvalisation, pinShearStress } from "../pin/pinStress.ts";
import { ringBackClearance } from "../rings/ringGroove.ts";
import { ringMeanPressure } from "../rings/ringMeanPressure.ts";
import { deckClearance } from "../stack/deckClearance.ts";
import { pistonRock } from "../stack/pistonRock.ts";
import { squishVelocity } from "../stack/squishVelocity.ts";
import { worstCaseAndRss } from "../stack/worstCaseAndRss.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { cylinderVolumeAt } from "../volumes/cylinderVolumeAt.ts";
import { cylinderVolumeRate } from "../volumes/cylinderVolumeRate.ts";
import { bar, between, cm3, deg, GPa, kN, MPa, mm, near, nearly } from "./support.test-support.ts";

/** Laws that every folder has to keep at the edge of what it knows: a rod without end, a wall without bore. */
const throws = between(25 * mm, 60 * mm);
const bores = between(60 * mm, 110 * mm);
const angles = between(-7, 7);
const endless = (throwRadius: number) => ({ throwRadius, rodLength: 1e7 * throwRadius, pinLineOffset: 0 });

property.prop([throws, bores, between(30 * cm3, 90 * cm3), angles])(
  "with a rod without end the piston moves as a cosine, and the volume with it",
  (r, bore, clearanceVolume, angle) => {
    const input = { crank: endless(r), bore, clearanceVolume, angle };
    const area = boreArea(bore);
    nearly(cylinderVolumeAt(input), clearanceVolume + area * r * (1 - Math.cos(angle)), 1e-5);
    near(cylinderVolumeRate(input), area * r * Math.sin(angle), 1e-6 * area * r);
  },
);

property.prop([throws, bores, between(5, 14), between(30 * deg, 80 * deg)], { numRuns: 30 })(
  "with a rod without end a starter meets the torque of a cosine, no sample of which is greater",
  (r, bore, ratio, inletClosing) => {
    const area = boreArea(bore);
    const clearanceVolume = (2 * r * area) / (ratio - 1);
    const ambientPressure = 1 * bar;
    const input = { crank: endless(r), bore, clearanceVolume, inletClosing, ambientPressure };
    const volume = (angle: number) => clearanceVolume + area * r * (1 - Math.cos(angle));
    let greatest = 0;
    for (let k = 0; k <= 4000; k++) {
      const angle = ((inletClosing - Math.PI) * k) / 4000;
      const pressure = ambientPressure * (volume(inletClosing - Math.PI) / volume(angle)) ** 1.25;
      greatest = Math.max(greatest, (pressure - ambientPressure) * area * r * Math.sin(-angle));
    }
    nearly(crankingTorque(input).torque, greatest, 1e-4);
  },
);

property.prop([throws, between(0.7 * mm, 2 * mm), between(0.1, 0.6), between(-80 * deg, -5 * deg)])(
  "with a rod without end the band of a squish empties as a cosine closes it",
  (r, gap, share, angle) => {
    const pistonArea = boreArea(90 * mm);
    const band = { pistonArea, bandArea: share * pistonArea, edgeLength: 0.2, gap, angularSpeed: 600 };
    const clearanceVolume = 60 * cm3;
    const travel = r * (1 - Math.cos(angle));
    const volume = clearanceVolume + pistonArea * travel;
    const speed = -r * 600 * Math.sin(angle);
    const gone = 1 - (pistonArea * (gap + travel)) / volume;
    nearly(
      squishVelocity({ ...band, clearanceVolume, crank: endless(r) }, angle),
      ((speed * band.bandArea) / (0.2 * (gap + travel))) * gone,
      1e-5,
    );
  },
);

property.prop([throws, between(0, 3 * mm)])(
  "with a pin line on the axis the stack is a sum of lengths",
  (r, deck) => {
    const crank = { throwRadius: r, rodLength: 3 * r, pinLineOffset: 0 };
    const compressionHeight = 30 * mm;
    const deckHeight = 4 * r + compressionHeight + deck;
    near(deckClearance({ crank, deckHeight, compressionHeight }), deck, 1e-15);
  },
);

property.prop([throws, between(1 * mm, 30 * mm)])(
  "with a rod without end the piston meets the counterweight at the bottom, by their heights alone",
  (r, room) => {
    const counterweightRadius = 1.4 * r;
    const crank = endless(r);
    // At the bottom the counterweight stands at its top, straight below the pin.
    const lowestPointDepth = crank.rodLength - r - counterweightRadius - room;
    const found = pistonToCounterweight({
      crank,
      counterweightRadius,
      counterweightHalfSpan: 60 * deg,
      lowestPointDepth,
      lowestHalfWidth: 0,
    });
    near(found.clearance, room, 1e-7);
    near(Math.cos(found.angle), -1, 1e-6);
  },
);

const loads = between(5 * kN, 60 * kN);
property.prop([between(20 * kN, 60 * kN), loads, between(1 * deg, 80 * deg), between(0.3, 3)])(
  "a cap's ratios hang on its load and clamp by their quotient, and bolts share alike",
  (preload, firingLoad, firingLineAngle, scale) => {
    const cap = { bolts: 2, preload, firingLoad, firingLineAngle };
    const scaled = { ...cap, preload: scale * preload, firingLoad: scale * firingLoad };
    nearly(capClampRatio(scaled), capClampRatio(cap));
    nearly(capSlipRatio({ ...scaled, friction: 0.15 }), capSlipRatio({ ...cap, friction: 0.15 }), 1e-8);
    nearly(capClampRatio({ ...cap, bolts: 4, preload: preload / 2 }), capClampRatio(cap));
  },
);

const steel = { elasticModulus: 206 * GPa, poissonRatio: 0.29 };
const iron = { elasticModulus: 110 * GPa, poissonRatio: 0.26 };
property.prop([
  between(200, 4000),
  between(8 * mm, 20 * mm),
  between(3 * mm, 20 * mm),
  between(5 * mm, 15 * mm),
])(
  "a contact carries its load, is alike from both sides, and with a roller without end is that of a flat follower",
  (force, width, camRadius, rollerRadius) => {
    const contact = { force, width, camRadius, cam: steel, follower: iron };
    const rolled = camContactPressure({ ...contact, followerCurvature: 1 / rollerRadius });
    // Half an ellipse of pressure over the line.
    nearly((Math.PI / 2) * rolled.pressure * rolled.halfWidth * width, force);
    const turned = camContactPressure({
      ...contact,
      camRadius: rollerRadius,
      followerCurvature: 1 / camRadius,
      cam: iron,
      follower: steel,
    });
    nearly(turned.pressure, rolled.pressure);
    const flat = camContactPressure({ ...contact, followerCurvature: 0 });
    nearly(
      camContactPressure({ ...contact, followerCurvature: 1e-9 / camRadius }).pressure,
      flat.pressure,
      1e-8,
    );
    expect(rolled.pressure).toBeGreaterThan(flat.pressure);
  },
);

property.prop([
  loads,
  between(18 * mm, 26 * mm),
  between(0, 0.85),
  between(50 * mm, 64 * mm),
  between(0.3, 0.6),
])(
  "a pin bends as the beam under its pressures does, and its bore takes what a bore takes",
  (force, pinDiameter, k, pinLength, share) => {
    const bossDistance = share * pinLength;
    const smallEndWidth = 0.8 * bossDistance;
    const pin = { force, pinDiameter, pinLength, bossDistance, smallEndWidth };
    // Moment at the middle, from the pressures of one side added up strip by strip.
    const steps = 2000;
    const strip = (from: number, to: number, press: (x: number) => number) => {
      const width = (to - from) / steps;
      let moment = 0;
      for (let i = 0; i < steps; i++) {
        const x = from + (i + 0.5) * width;
        moment += press(x) * x * width;
      }
      return moment;
    };
    const boss = (pinLength - bossDistance) / 2;
    const peak = force / boss;
    const bosses = strip(bossDistance / 2, pinLength / 2, (x) => peak * (1 - (x - bossDistance / 2) / boss));
    const eye = strip(0, smallEndWidth / 2, () => force / smallEndWidth);
    const beam = (32 * (bosses - eye)) / (Math.PI * pinDiameter ** 3);
    const solid = pinBendingStress({ ...pin, pinBore: 0 });
    // The rounded constant 1.2 in place of 12 pi / 32.
    nearly(solid, beam, 0.02);
    const bored = { ...pin, pinBore: k * pinDiameter };
    nearly(pinBendingStress(bored), solid / (1 - k ** 4), 1e-9);
    nearly(pinShearStress({ force, pinDiameter, pinBore: 0 }), (0.85 * force) / pinDiameter ** 2, 1e-12);
    expect(pinShearStress(bored)).toBeGreaterThanOrEqual(pinShearStress({ ...bored, pinBore: 0 }));
  },
);

property.prop([loads, between(18 * mm, 26 * mm), between(0.4, 0.79)])(
  "a pin grows out of round with its load and with its bore, within the bores that the formula knows",
  (force, pinDiameter, k) => {
    const pin = { force, pinDiameter, pinLength: 60 * mm, elasticModulus: 206 * GPa };
    const at = (ratio: number) => pinOvalisation({ ...pin, pinBore: ratio * pinDiameter });
    nearly(pinOvalisation({ ...pin, force: 2 * force, pinBore: k * pinDiameter }), 2 * at(k));
    expect(at(Math.min(0.8, k + 0.01))).toBeGreaterThan(at(k));
    expect(() => at(0.39)).toThrow(RangeError);
    expect(() => at(0.81)).toThrow(RangeError);
  },
);

property.prop([bores, between(1, 40), between(0.8 * mm, 3 * mm), between(0, 0.1 * mm)])(
  "a ring's pressure holds its two ends' pull, and its room behind on both sides adds up to that of no shift",
  (bore, tangentialForce, ringHeight, pistonShift) => {
    const pressure = ringMeanPressure({ tangentialForce, bore, ringHeight });
    // Across any diameter: even pressure on the projected face against the pull of both cuts.
    let across = 0;
    const steps = 1000;
    for (let i = 0; i < steps; i++)
      across +=
        pressure * Math.sin(((i + 0.5) * Math.PI) / steps) * (bore / 2) * (Math.PI / steps) * ringHeight;
    nearly(across, 2 * tangentialForce, 1e-5);
    const groove = { bore, grooveRootDiameter: bore - 8 * mm, ringRadialWall: 3 * mm };
    const still = ringBackClearance({ ...groove, pistonShift: 0 });
    near(still - ringBackClearance({ ...groove, pistonShift }), pistonShift, 1e-15);
  },
);

property.prop([between(0.01, 1), between(0.01, 1), between(0.01, 1), bores])(
  "spreads add up at worst and as a right angle at best; a piston rocks as its skirt lets it",
  (a, b, c, bore) => {
    const all = [a * mm, b * mm, c * mm];
    const { worstCase, rss } = worstCaseAndRss(all);
    nearly(worstCase, (a + b + c) * mm);
    nearly(rss ** 2, (a * a + b * b + c * c) * mm * mm);
    expect(rss).toBeLessThanOrEqual(worstCase);
    expect(rss).toBeGreaterThanOrEqual(worstCase / Math.sqrt(3) - 1e-15);
    nearly(worstCaseAndRss([c, a, b].map((one) => one * mm)).rss, rss);
    // The skirt turns until it bears above on one side and below on the other: one triangle, twice.
    const [skirtClearance, skirtLength] = [0.05 * a * mm, 40 * mm];
    const tilt = skirtClearance / skirtLength;
    nearly(pistonRock({ bore, skirtClearance, skirtLength }), (bore / 2) * tilt, 1e-12);
  },
);

property.prop([between(60 * mm, 160 * mm), between(300, 1200), between(0.05, 0.95)])(
  "a disc with a hole of no width is pulled twice as hard at its edge as one without, and a rim as a ring",
  (outerRadius, angularSpeed, poissonShare) => {
    const poissonRatio = 0.49 * poissonShare;
    const disc = { outerRadius, density: 7800, poissonRatio, angularSpeed };
    const speed = disc.density * (angularSpeed * outerRadius) ** 2;
    const pin = discStress({ ...disc, holeRadius: 1e-6 * outerRadius });
    nearly(pin, 2 * ((3 + poissonRatio) / 8) * speed, 1e-9);
    nearly(discStress({ ...disc, holeRadius: (1 - 1e-9) * outerRadius }), speed, 1e-8);
    expect(pin / MPa).toBeGreaterThan(0);
  },
);
