import { test } from "vitest";
import { near, refuses, refusesNonFinite, um } from "../check/support.test-support.ts";
import { filmRatio, steadyFilm } from "./steadyFilm.ts";

test("examples and boundary", () => {
  near(steadyFilm({ radialClearance: 30 * um, eccentricity: 0.83 }) / um, 5.1, 1e-9);
  const film = { filmThickness: 1.4 * um, journalRoughness: 0.12 * um, shellRoughness: 0.3 * um };
  near(filmRatio(film), 4.33, 5e-3);
  refuses(() => steadyFilm({ radialClearance: 30 * um, eccentricity: 1.01 }), "eccentricity");
  refuses(
    () => filmRatio({ ...film, journalRoughness: 0, shellRoughness: 0 }),
    "journalRoughness and shellRoughness",
  );
  refusesNonFinite(steadyFilm, { radialClearance: 30 * um, eccentricity: 0.83 });
  refusesNonFinite(filmRatio, film);
});
