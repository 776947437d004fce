import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, GPa, mm, near, nearly, um } from "../check/support.test-support.ts";
import { thermalGrowth } from "../stack/ThermalPart.ts";
import { hotBearingClearance } from "./bearingClearance.ts";
import { centrifugalHead } from "./centrifugalHead.ts";
import { axialShift, crankEndPlay, hotCrankEndPlay } from "./crankEndPlay.ts";
import { crushInterference, hotInterferenceChange } from "./crushFit.ts";
import { crushPressure, crushStress } from "./crushPressure.ts";
import { oilTemperatureRise, trumplerFilm } from "./filmHeating.ts";
import { housingExpansion } from "./housingExpansion.ts";
import { oilDensity } from "./oilViscosity.ts";
import { petroffPower } from "./petroffPower.ts";
import { frictionVariable } from "./reynoldsFilm.ts";
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
