import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { meshAround } from "./filmMesh.ts";
import { filmPressures } from "./filmPressures.ts";
import { frictionVariable, reynoldsFilm } from "./reynoldsFilm.ts";
import { shortBearingAttitude, shortBearingSommerfeld } from "./shortBearing.ts";

test("a mesh twice as fine changes the load by less than 0.3 %, up to an eccentricity of 0.99", () => {
  for (const [lengthRatio, eccentricity] of [
    [0.25, 0.3],
    [1, 0.8],
    [2, 0.97],
    [0.4, 0.99],
  ] as const) {
    const input = { lengthRatio, eccentricity };
    const [usual, fine] = [reynoldsFilm(input), reynoldsFilm(input, { around: 360, along: 32 })];
    nearly(usual.sommerfeld, fine.sommerfeld, 3e-3);
    nearly(usual.attitude, fine.attitude, 1e-3);
    nearly(usual.friction, fine.friction, 3e-3);
    nearly(usual.flow, fine.flow, 1.5e-2);
    nearly(usual.pressureRatio, fine.pressureRatio, 3e-3);
  }
});

property.prop([between(0.02, 0.5)], { numRuns: 6 })(
  "a tenth of the diameter long it is the short bearing, a little less strong for its loss over the wedge",
  (eccentricity) => {
    const input = { lengthRatio: 0.1, eccentricity };
    const film = reynoldsFilm(input);
    nearly(shortBearingSommerfeld(input) / film.sommerfeld, 0.995, 6e-3);
    near(film.attitude, shortBearingAttitude(eccentricity), 0.01);
    // Short: what turns in with the wedge, less what turns out of it, leaves at the sides.
    nearly(film.sideFlowShare, (2 * eccentricity) / (1 + eccentricity), 1e-2);
  },
);

/** Pressures of the endless bearing over 6 mu omega (R/c)^2, by shooting for the film at its end. */
function endlessPressures(eccentricity: number): (angle: number) => number {
  const film = (angle: number) => 1 + eccentricity * Math.cos(angle);
  const steps = 4000;
  const walk = (end: number) => {
    const values = [0];
    for (let i = 0; i < steps; i++) {
      const angle = ((i + 0.5) * end) / steps;
      values.push(values[i]! + ((film(angle) - film(end)) / film(angle) ** 3) * (end / steps));
    }
    return values;
  };
  let [low, high] = [Math.PI, 2 * Math.PI];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (walk(middle).at(-1)! > 0) low = middle;
    else high = middle;
  }
  const values = walk(low);
  return (angle) => (angle >= low ? 0 : values[Math.round((angle / low) * steps)]!);
}

test("the middle of a bearing thirty diameters long is the endless bearing, integrated another way", () => {
  for (const eccentricity of [0.3, 0.8]) {
    const mesh = meshAround(eccentricity, 240);
    const along = 8;
    const pressures = filmPressures(mesh, 30, along);
    const endless = endlessPressures(eccentricity);
    const greatest = Math.max(...Array.from(mesh.angles, endless));
    for (const [i, angle] of mesh.angles.entries())
      near(pressures[i * (along + 1)]!, endless(angle), 5e-3 * greatest);
  }
});

test("what the sides let out, added up along the edges, is the share that the balance of flow gives", () => {
  const [eccentricity, lengthRatio, along] = [0.6, 0.8, 64];
  const mesh = meshAround(eccentricity, 180);
  const pressures = filmPressures(mesh, lengthRatio, along);
  const row = along + 1;
  let out = 0;
  for (let i = 1; i < 180; i++) {
    // One-sided difference of second order at the edge, where the pressure is 0.
    const slope = ((pressures[i * row + along - 2]! - 4 * pressures[i * row + along - 1]!) / 2) * along;
    out += -(mesh.films[i]! ** 3) * slope * (mesh.faces[i]! - mesh.faces[i - 1]!);
  }
  const film = reynoldsFilm({ eccentricity, lengthRatio }, { around: 180, along });
  nearly((Math.PI / lengthRatio ** 2) * out, film.flow * film.sideFlowShare, 2e-2);
});

test("boundary", () => {
  refuses(() => reynoldsFilm({ eccentricity: 0, lengthRatio: 1 }), "eccentricity");
  refuses(() => reynoldsFilm({ eccentricity: 0.5, lengthRatio: 2.1 }), "lengthRatio");
  refuses(() => frictionVariable({ sommerfeld: 0, attitude: 1, eccentricity: 0.5 }), "sommerfeld");
  refusesNonFinite(reynoldsFilm, { eccentricity: 0.5, lengthRatio: 1 });
  refusesNonFinite(frictionVariable, { sommerfeld: 0.1, attitude: 1, eccentricity: 0.5 });
  expect(reynoldsFilm({ eccentricity: 0.5, lengthRatio: 0.1 }).sommerfeld).toBeGreaterThan(0);
});
