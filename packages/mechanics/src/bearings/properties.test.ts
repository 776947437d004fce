import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, between, GPa, mm, near, nearly, rpm, um } from "../check/support.test-support.ts";
import { thermalGrowth } from "../stack/ThermalPart.ts";
import { hotBearingClearance } from "./bearingClearance.ts";
import { centrifugalHead } from "./centrifugalHead.ts";
import { axialShift, crankEndPlay, hotCrankEndPlay } from "./crankEndPlay.ts";
import { crushInterference, hotInterferenceChange } from "./crushFit.ts";
import { crushPressure, crushStress } from "./crushPressure.ts";
import { oilTemperatureRise, trumplerFilm } from "./filmHeating.ts";
import { meshAround } from "./filmMesh.ts";
import { filmColumn, finiteFilm } from "./finiteFilm.ts";
import { housingExpansion } from "./housingExpansion.ts";
import { mainBearingLoads } from "./mainBearingLoads.ts";
import { oilDensity } from "./oilViscosity.ts";
import { petroffPower } from "./petroffPower.ts";
import { frictionVariable } from "./reynoldsFilm.ts";
import { mobilityAt, shortBearingMobility } from "./shortBearingMobility.ts";
import { sideClearance } from "./sideClearance.ts";
import { sommerfeld } from "./sommerfeld.ts";
import { filmRatio, steadyFilm } from "./steadyFilm.ts";

property.prop([between(40 * mm, 80 * mm), between(5e-6, 25e-6), between(-60, 150)])(
  "a bearing of one metal at one temperature grows in proportion, its end play too",
  (size, expansion, temperatureRise) => {
    const part = (length: number) => ({ size: length, expansion, temperatureRise });
    const parts = { housing: part(size + 3.05 * mm), shellWall: part(1.5 * mm), journal: part(size) };
    near(hotBearingClearance(parts), 0.05 * mm + thermalGrowth(part(0.05 * mm)), 1e-12);
    const endPlay = crankEndPlay({
      journalLength: size,
      webWidth: size - 5.2 * mm,
      washerThickness: 2.5 * mm,
    });
    const hot = hotCrankEndPlay({
      endPlay,
      journal: part(size),
      web: part(size - 5.2 * mm),
      washer: part(2.5 * mm),
    });
    near(hot, 0.2 * mm + thermalGrowth(part(0.2 * mm)), 1e-12);
    near(axialShift({ block: part(size), crankshaft: part(size) }), 0, 1e-18);
  },
);

property.prop([between(10e-6, 25e-6), between(10e-6, 25e-6), between(0, 150)])(
  "a housing of two metals grows as the mean of two housings of one, and shells that grow with it keep their grip",
  (block, cap, rise) => {
    const growth = (housingExpansionOf: number) =>
      hotInterferenceChange({
        housingBore: 55 * mm,
        shellExpansion: block,
        shellRise: rise,
        housingExpansion: housingExpansionOf,
        housingRise: rise,
      });
    near(growth(block), 0, 1e-18);
    near(growth(housingExpansion({ block, cap })), (growth(block) + growth(cap)) / 2, 1e-15);
    expect(housingExpansion({ block, cap })).toBe(housingExpansion({ block: cap, cap: block }));
  },
);

property.prop([between(5 * um, 80 * um), between(40 * mm, 80 * mm), between(1 * mm, 3 * mm)])(
  "a rigid housing's pressure holds the hoop force of both walls, and the strain is the interference over the bore",
  (crush, housingBore, shellWall) => {
    const shells = { crush, housingBore, elasticModulus: 206 * GPa };
    nearly(crushStress(shells) / (206 * GPa), crushInterference(crush) / housingBore, 1e-12);
    const pressure = crushPressure({ ...shells, shellWall });
    nearly(pressure * housingBore, 2 * crushStress(shells) * shellWall, 1e-12);
  },
);

property.prop([between(15 * mm, 40 * mm), between(0, 1), between(0, 1), between(-900, 900)])(
  "the head of a drilling is that of its two halves, whichever way the crankshaft turns",
  (journalRadius, one, two, angularSpeed) => {
    const [middle, least] = [Math.max(one, two) * journalRadius, Math.min(one, two) * journalRadius];
    const head = (outer: number, inner: number, speed = angularSpeed) =>
      outer === 0
        ? 0
        : centrifugalHead({ density: 850, angularSpeed: speed, journalRadius: outer, leastRadius: inner });
    near(head(journalRadius, middle) + head(middle, least), head(journalRadius, least), 1e-6);
    near(head(journalRadius, least, -angularSpeed), head(journalRadius, least), 1e-9);
  },
);

property.prop([
  between(20 * mm, 35 * mm),
  between(10 * um, 60 * um),
  between(100, 1000),
  between(3e-3, 0.05),
])(
  "an unloaded bearing is Petroff's: its friction variable is 2 pi^2 S, and its heat warms its oil",
  (journalRadius, radialClearance, angularSpeed, viscosity) => {
    const unitLoad = 1e5;
    const film = { viscosity, angularSpeed, journalRadius, radialClearance };
    const number = sommerfeld({ ...film, unitLoad });
    const friction = frictionVariable({ sommerfeld: number, attitude: Math.PI / 2, eccentricity: 0 });
    const power = petroffPower({ ...film, length: 20 * mm });
    const force = (friction * radialClearance * unitLoad * 2 * journalRadius * 20 * mm) / journalRadius;
    nearly(force * angularSpeed * journalRadius, power, 1e-12);
    const oil = {
      flow: 1e-4,
      density: oilDensity({ densityAt15: 870, temperature: 373 }),
      heatCapacity: 2000,
    };
    const rise = oilTemperatureRise({ frictionPower: power, ...oil });
    nearly(rise * oil.flow * oil.density * oil.heatCapacity, power, 1e-12);
  },
);

property.prop([
  between(10 * um, 60 * um),
  between(0, 1),
  between(0.01 * um, 1 * um),
  between(0.01 * um, 1 * um),
])(
  "film and offset make up the clearance; roughness counts alike on both sides",
  (radialClearance, eccentricity, journalRoughness, shellRoughness) => {
    const film = steadyFilm({ radialClearance, eccentricity });
    near(film + eccentricity * radialClearance, radialClearance, 1e-18);
    const ratio = filmRatio({ filmThickness: film, journalRoughness, shellRoughness });
    const swapped = { journalRoughness: shellRoughness, shellRoughness: journalRoughness };
    nearly(filmRatio({ filmThickness: film, ...swapped }), ratio, 1e-12);
    const smooth = filmRatio({ filmThickness: film, journalRoughness, shellRoughness: 0 });
    expect(ratio).toBeLessThanOrEqual(smooth);
  },
);

property.prop([between(30 * mm, 100 * mm), between(1 * mm, 50 * mm)])(
  "a film wanted grows evenly with the journal, and rods and gaps fill the pin",
  (journal, more) => {
    const grown = trumplerFilm(journal + more) - trumplerFilm(journal);
    nearly(grown, trumplerFilm(2 * journal + more) - trumplerFilm(2 * journal), 1e-9);
    expect(trumplerFilm(journal)).toBeGreaterThan(0);
    const gaps = sideClearance({ crankpinLength: journal, rods: 2, rodWidth: 0.49 * journal });
    nearly(gaps + 2 * 0.49 * journal, journal, 1e-12);
  },
);

property.prop([between(0, 0.99), fc.integer({ min: 2, max: 60 })])(
  "the nodes of a film go once round, alike on both sides, and crowd where it is thin",
  (eccentricity, halfCells) => {
    const cells = 2 * halfCells;
    const { angles: nodes, films, faces } = meshAround(eccentricity, cells);
    near(nodes[cells]! - nodes[0]!, 2 * Math.PI, 1e-12);
    near(nodes[halfCells]!, Math.PI, 1e-12);
    near(films[halfCells]!, 1 - eccentricity, 1e-12);
    for (let i = 0; i < halfCells; i++) {
      near(nodes[i]! + nodes[cells - i]!, 2 * Math.PI, 1e-12);
      expect(faces[i]!).toBeGreaterThan(nodes[i]!);
      expect(faces[i]!).toBeLessThan(nodes[i + 1]!);
    }
    expect(nodes[1]! - nodes[0]!).toBeGreaterThanOrEqual(nodes[halfCells]! - nodes[halfCells - 1]! - 1e-12);
  },
);

property.prop([between(0.1, 2), between(0.02, 0.98)])(
  "a film's columns are what the film says",
  (lengthRatio, e) => {
    const film = finiteFilm({ eccentricity: e, lengthRatio });
    nearly(filmColumn(lengthRatio, "attitude")(e), film.attitude, 1e-12);
    nearly(filmColumn(lengthRatio, "flow")(e), film.flow, 1e-12);
    // A finite film carries less than the short bearing's parabola along the axis.
    expect(filmColumn(lengthRatio, "loadShare")(e)).toBeLessThanOrEqual(1.001);
    expect(filmColumn(lengthRatio, "sideFlowShare")(e)).toBeLessThan(1);
  },
);

property.prop([between(-0.9, 0.9), between(-0.9, 0.9), between(0.1, 2)])(
  "mobility is the same, checked or not, and mirrored across the load",
  (along, across, lengthRatio) => {
    const found = mobilityAt(along, across, lengthRatio);
    expect(shortBearingMobility(along, across, lengthRatio)).toEqual(found);
    const mirrored = mobilityAt(along, -across, lengthRatio);
    nearly(mirrored.along, found.along, 1e-12);
    near(mirrored.across, -found.across, 1e-12);
    // A load always drives the journal its own way.
    expect(found.along).toBeGreaterThan(0);
  },
);

test("the last node stands a whole turn on, however many cells there are", () => {
  for (let cells = 2; cells <= 400; cells += 2)
    near(meshAround(0.5, cells).angles[cells]!, 2 * Math.PI, 1e-15);
});

const samples = fc.array(between(-5e4, 5e4), { minLength: 12, maxLength: 12 });
property.prop([samples, samples, angles, fc.integer({ min: 1, max: 4 }), between(0, 2)])(
  "all main bearings together hold all rods, at every moment",
  (x, y, bank, throws, balanceMass) => {
    const rod = { x: Float64Array.from(x), y: Float64Array.from(y) };
    const cylinders = Array.from({ length: throws }, (_, k) => ({
      bank,
      position: 0.1 * k,
      fires: (k % 4) * Math.PI,
    }));
    const input = { rod, cylinders, rodsPerPin: 1, throwRadius: 45 * mm, angularSpeed: 6000 * rpm };
    const bare = mainBearingLoads({ ...input, balanceMass: 0 });
    expect(bare.length).toBe(throws + 1);
    const pull = balanceMass * input.throwRadius * input.angularSpeed ** 2;
    const loaded = mainBearingLoads({ ...input, balanceMass });
    for (let i = 0; i < x.length; i++) {
      const total = (loads: typeof bare, part: "x" | "y") =>
        loads.reduce((sum, load) => sum + load[part][i]!, 0);
      let [sumX, sumY] = [0, 0];
      let [pullX, pullY] = [0, 0];
      for (const { fires } of cylinders) {
        // A firing angle of whole half turns is a whole number of samples: 12 in two turns.
        const shift = Math.round((fires / (4 * Math.PI)) * 12);
        const [across, along] = [x[(i - shift + 12) % 12]!, y[(i - shift + 12) % 12]!];
        sumX += across * Math.cos(bank) + along * Math.sin(bank);
        sumY += along * Math.cos(bank) - across * Math.sin(bank);
        const pin = bank + (i * 4 * Math.PI) / 12 - fires;
        pullX += pull * Math.sin(pin);
        pullY += pull * Math.cos(pin);
      }
      near(total(bare, "x"), sumX, 1e-6);
      near(total(bare, "y"), sumY, 1e-6);
      near(total(loaded, "x"), sumX - pullX, 1e-6);
      near(total(loaded, "y"), sumY - pullY, 1e-6);
    }
  },
);
