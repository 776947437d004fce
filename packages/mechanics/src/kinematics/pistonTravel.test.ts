import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  angles,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  offsetCrank,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { bottomDeadCentre } from "./deadCentres.ts";
import { pistonStroke } from "./pistonStroke.ts";
import { pistonTravel } from "./pistonTravel.ts";

test("examples", () => {
  near(pistonTravel(offsetCrank, 20 * deg) / mm, 3.78756, 5e-6);
  near(pistonTravel(centredCrank, 14.5847 * deg) / mm, 2, 2e-5);
  refusesNonFinite(pistonTravel, offsetCrank, 1);
});

property.prop([cranks, angles])("travel runs from 0 to the stroke", (crank, angle) => {
  const stroke = pistonStroke(crank);
  const travel = pistonTravel(crank, angle);
  expect(travel).toBeGreaterThanOrEqual(-1e-12);
  expect(travel).toBeLessThanOrEqual(stroke + 1e-12);
  near(pistonTravel(crank, bottomDeadCentre(crank).angle), stroke, 1e-12);
});
