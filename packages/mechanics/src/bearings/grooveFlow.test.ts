import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { bar, between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { grooveFlow } from "./grooveFlow.ts";

const groove = {
  journalDiameter: 57 * mm,
  radialClearance: 0.0236 * mm,
  supplyPressure: 5.5 * bar,
  viscosity: 8.25e-3,
  landLength: 7.5 * mm,
  eccentricity: 0.6,
  arc: 2 * Math.PI,
};

test("example: 0.322 L/min", () => near(grooveFlow(groove) * 6e4, 0.322, 5e-4));

property.prop([between(0, 0.99), between(0.05, 2 * Math.PI)])(
  "is the slot flow added up round the groove, and 1 + 1.5 e^2 for a full one",
  (eccentricity, arc) => {
    const steps = 2000;
    let films = 0;
    for (let i = 0; i < steps; i++) {
      const angle = -arc / 2 + ((i + 0.5) * arc) / steps;
      films += ((1 + eccentricity * Math.cos(angle)) ** 3 * arc) / steps;
    }
    const { radialClearance, supplyPressure, viscosity, landLength, journalDiameter } = groove;
    const slot = (radialClearance ** 3 * supplyPressure) / (12 * viscosity * landLength);
    nearly(grooveFlow({ ...groove, eccentricity, arc }), 2 * slot * (journalDiameter / 2) * films, 1e-5);
    nearly(
      grooveFlow({ ...groove, eccentricity }) / grooveFlow({ ...groove, eccentricity: 0 }),
      1 + 1.5 * eccentricity ** 2,
    );
  },
);

test("boundary", () => {
  refuses(() => grooveFlow({ ...groove, arc: 7 }), "arc");
  refuses(() => grooveFlow({ ...groove, eccentricity: 1 }), "eccentricity");
  refuses(() => grooveFlow({ ...groove, landLength: 0 }), "landLength");
  refusesNonFinite(grooveFlow, groove);
});
