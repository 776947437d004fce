import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { oilDensity, vogelViscosity, waltherViscosity } from "./oilViscosity.ts";

const celsius = (degrees: number) => degrees + 273.15;
const first = { temperature: celsius(100), viscosity: 19e-3 };
const second = { temperature: celsius(150), viscosity: 5.3e-3 };
const cSt = 1e-6;

test("example: 19.0 and 5.3 mPa s give 8.251 mPa s at 130 degrees", () => {
  near(vogelViscosity({ temperature: celsius(130), first, second }) * 1e3, 8.251, 5e-4);
});

test("a multigrade of 70 and 11.1 mm2/s has 32.92 at 60 degrees, a spindle oil of 30 and 5.23 14.5", () => {
  // Printed by an independent implementation of ASTM D341, which takes 273 K for the ice point.
  const at = (v40: number, v100: number) => ({
    first: { temperature: 313, viscosity: v40 * cSt },
    second: { temperature: 373, viscosity: v100 * cSt },
  });
  near(waltherViscosity({ temperature: 333, ...at(70, 11.1) }) / cSt, 32.92, 0.15);
  near(waltherViscosity({ temperature: 333, ...at(30, 5.23) }) / cSt, 14.525, 0.1);
  near(waltherViscosity({ temperature: 353, ...at(32, 5.4) }) / cSt, 8.5, 0.05);
});

property.prop([between(0, 150)])("both run through their points, and the hotter the thinner", (degrees) => {
  const temperature = celsius(degrees);
  for (const fit of [vogelViscosity, waltherViscosity]) {
    // In mPa s over a density near 1 the points serve both.
    const points =
      fit === vogelViscosity
        ? { first, second }
        : {
            first: { ...first, viscosity: first.viscosity * 1e-3 },
            second: { ...second, viscosity: second.viscosity * 1e-3 },
          };
    nearly(fit({ temperature: first.temperature, ...points }), points.first.viscosity);
    nearly(fit({ temperature: second.temperature, ...points }), points.second.viscosity);
    const here = fit({ temperature, ...points });
    expect(fit({ temperature: temperature + 1, ...points })).toBeLessThan(here);
    nearly(fit({ temperature, first: points.second, second: points.first }), here, 1e-9);
  }
});

property.prop([between(100, 150)])(
  "between the two points of one oil both fits agree within 3 %",
  (degrees) => {
    const temperature = celsius(degrees);
    const density = 1000;
    const kinematic = (point: typeof first) => ({ ...point, viscosity: point.viscosity / density });
    const walther = waltherViscosity({ temperature, first: kinematic(first), second: kinematic(second) });
    nearly(vogelViscosity({ temperature, first, second }), density * walther, 0.03);
  },
);

test("an oil of 860 kg/m3 has about 800 at 108 degrees", () => {
  near(oilDensity({ densityAt15: 860, temperature: celsius(108) }), 800, 0.5);
  nearly(oilDensity({ densityAt15: 860, temperature: celsius(15) }), 860);
});

test("boundary", () => {
  const input = { temperature: celsius(120), first, second };
  refuses(() => vogelViscosity({ ...input, second: first }), "temperature");
  refuses(() => vogelViscosity({ ...input, temperature: 170 }), "temperature");
  refuses(
    () => waltherViscosity({ ...input, first: { ...first, viscosity: 0.2 * cSt }, second }),
    "viscosity",
  );
  refuses(() => oilDensity({ densityAt15: 0, temperature: 300 }), "densityAt15");
  refusesNonFinite(vogelViscosity, input);
  refusesNonFinite(waltherViscosity, input);
  refusesNonFinite(oilDensity, { densityAt15: 860, temperature: 300 });
});
