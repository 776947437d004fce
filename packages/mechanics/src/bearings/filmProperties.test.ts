import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, between, mm, near, nearly, rpm } from "../check/support.test-support.ts";
import { meshAround } from "./filmMesh.ts";
import { filmColumn, finiteFilm } from "./finiteFilm.ts";
import { mainBearingLoads } from "./mainBearingLoads.ts";
import { mobilityAt, shortBearingMobility } from "./shortBearingMobility.ts";

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
