import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, near, nearly } from "../check/support.test-support.ts";
import { bogackiShampine } from "./bogackiShampine.ts";
import { meshAround } from "./filmMesh.ts";
import { filmPressures } from "./filmPressures.ts";
import { filmRow } from "./filmTableNodes.ts";
import { finiteFilm } from "./finiteFilm.ts";
import { tableCurve, tableCurveThrough } from "./tableCurve.ts";

property.prop([between(-3, 3), between(-3, 3), between(-2, 2), between(-2, 2), between(0.1, 3)])(
  "a path of constant turning and decay ends where its exponential says, and leads back",
  (decay, turning, x, y, time) => {
    const slope = (sign: number) => (_at: number, px: number, py: number, into: Float64Array) => {
      into[0] = sign * (-decay * px - turning * py);
      into[1] = sign * (turning * px - decay * py);
    };
    const span = { from: 0, to: time, x, y, tolerance: 1e-8, widest: 0.2 };
    const [ex, ey] = bogackiShampine(slope(1), span);
    const [size, angle] = [Math.exp(-decay * time), turning * time];
    const allowed = 1e-5 * (1 + Math.hypot(x, y)) * Math.max(1, size);
    near(ex, size * (x * Math.cos(angle) - y * Math.sin(angle)), allowed);
    near(ey, size * (x * Math.sin(angle) + y * Math.cos(angle)), allowed);
    const [backX, backY] = bogackiShampine(slope(-1), { ...span, x: ex, y: ey });
    near(Math.hypot(backX - x, backY - y), 0, 1e-5 * (1 + Math.hypot(x, y)) * Math.max(1, 1 / size, size));
  },
);

property.prop([fc.array(between(0.1, 3), { minLength: 2, maxLength: 8 }), between(-1, 12)])(
  "a curve through a table stays between its neighbours and turns only where the table does",
  (widths, at) => {
    let place = 0;
    const places = [0, ...widths.map((width) => (place += width))];
    const values = places.map((one) => Math.sin(one));
    const curve = tableCurveThrough(places, values);
    expect(tableCurve(places, values, at)).toBe(curve(at));
    const within = Math.min(places.at(-1)!, Math.max(0, at));
    const cell = Math.max(0, places.findIndex((one) => one >= within) - 1);
    const ends = [values[cell]!, values[cell + 1]!];
    expect(curve(at)).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-12);
    expect(curve(at)).toBeLessThanOrEqual(Math.max(...ends) + 1e-12);
    for (const [i, one] of places.entries()) near(curve(one), values[i]!, 1e-12);
  },
);

const AROUND = 48;
const ALONG = 6;
property.prop([between(0.05, 0.9), between(0.2, 1.5), between(1.05, 1.5)], { numRuns: 25 })(
  "film pressures never pull, vanish at both edges, fall to the side, and grow with length and eccentricity",
  (eccentricity, lengthRatio, more) => {
    const row = ALONG + 1;
    const of = (e: number, ratio: number) => filmPressures(meshAround(e, AROUND), ratio, ALONG);
    const pressures = of(eccentricity, lengthRatio);
    const greatest = Math.max(...pressures);
    expect(greatest).toBeGreaterThan(0);
    pressures.forEach((pressure, at) => {
      const [i, j] = [Math.floor(at / row), at % row];
      expect(pressure).toBeGreaterThanOrEqual(0);
      if (i === 0 || i === AROUND || j === ALONG) expect(pressure).toBe(0);
      if (j > 0) expect(pressure).toBeLessThanOrEqual(pressures[at - 1]! + 1e-7 * greatest);
    });
    const longer = of(eccentricity, more * lengthRatio);
    longer.forEach((pressure, at) => {
      expect(pressure).toBeGreaterThanOrEqual(pressures[at]! - 1e-6 * greatest);
    });
    expect(Math.max(...of(Math.min(0.95, more * eccentricity), lengthRatio))).toBeGreaterThan(greatest);
  },
);

property.prop([between(0.3, 1.9), between(0.15, 0.9)], { numRuns: 6 })(
  "a row of the table solved anew lies where the table is read between its rows",
  (lengthRatio, eccentricity) => {
    const [loadShare, attitude, flow, sideFlowShare, pressureRatio] = filmRow(lengthRatio, eccentricity);
    expect(loadShare).toBeGreaterThan(0);
    expect(loadShare).toBeLessThan(1);
    const film = finiteFilm({ lengthRatio, eccentricity });
    nearly(attitude, film.attitude, 2e-3);
    nearly(flow, film.flow, 2e-3);
    nearly(sideFlowShare, film.sideFlowShare, 4e-3);
    nearly(pressureRatio, film.pressureRatio, 4e-3);
  },
);

property.prop([between(0.01, 0.98), fc.integer({ min: 8, max: 200 })])(
  "a mesh goes once round, is alike on both sides, and is closest where the film is thin",
  (eccentricity, cells) => {
    const { angles, films, faces } = meshAround(eccentricity, 2 * cells);
    nearly(angles.at(-1)!, 2 * Math.PI, 1e-12);
    for (let k = 0; k < 2 * cells; k++) {
      expect(faces[k]!).toBeGreaterThan(angles[k]!);
      expect(faces[k]!).toBeLessThan(angles[k + 1]!);
      near(angles[k]! + angles[2 * cells - k]!, 2 * Math.PI, 1e-9);
    }
    near(Math.min(...films), 1 - eccentricity, 1e-9);
    const widths = Array.from({ length: cells }, (_, k) => angles[k + 1]! - angles[k]!);
    expect(widths.at(-1)!).toBeLessThan(widths[0]!);
  },
);
