import { test } from "@fast-check/vitest";
import { between, mm, near, nearly, refusesNonFinite, rpm } from "../check/support.test-support.ts";
import { windagePower } from "./windagePower.ts";

const four = { discs: 4, radius: 74 * mm, angularSpeed: 7800 * rpm, mistDensity: 15, mistViscosity: 2e-5 };

test("example: four throws", () => near(windagePower(four), 262, 1));

test.prop([between(1.1, 3)])("it grows with speed to the power 2.8 and radius to the power 4.6", (times) => {
  nearly(
    windagePower({ ...four, angularSpeed: times * four.angularSpeed }),
    times ** 2.8 * windagePower(four),
  );
  nearly(windagePower({ ...four, radius: times * four.radius }), times ** 4.6 * windagePower(four));
});

test("refusals", () => refusesNonFinite(windagePower, four));
