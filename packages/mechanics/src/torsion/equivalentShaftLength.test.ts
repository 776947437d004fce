import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, GPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { equivalentShaftLength, steppedShaftStiffness } from "./equivalentShaftLength.ts";

const segment = { length: 100 * mm, diameter: 40 * mm, boreDiameter: 20 * mm };

test("a shaft of the reference diameter keeps its length; half the diameter counts sixteen times", () => {
  const solid = { ...segment, boreDiameter: 0 };
  near(equivalentShaftLength({ segments: [solid], referenceDiameter: 40 * mm }) / mm, 100, 1e-10);
  near(equivalentShaftLength({ segments: [solid], referenceDiameter: 80 * mm }) / mm, 1600, 1e-9);
  // A bore of half the diameter takes 1/16 of the polar moment.
  near(equivalentShaftLength({ segments: [segment], referenceDiameter: 40 * mm }) / mm, 1600 / 15, 1e-10);
});

test("stiffness is G I_p / L", () => {
  const polarMoment = (Math.PI / 32) * (0.04 ** 4 - 0.02 ** 4);
  nearly(
    steppedShaftStiffness({ segments: [segment], shearModulus: 80 * GPa }),
    (80e9 * polarMoment) / 0.1,
    1e-12,
  );
});

test("boundary", () => {
  const length = { segments: [segment], referenceDiameter: 30 * mm };
  const stiffness = { segments: [segment], shearModulus: 80 * GPa };
  refusesNonFinite(equivalentShaftLength, length);
  refusesNonFinite(steppedShaftStiffness, stiffness);
  refuses(() => equivalentShaftLength({ ...length, segments: [] }), "segments");
  refuses(() => equivalentShaftLength({ ...length, referenceDiameter: 0 }), "referenceDiameter");
  refuses(() => steppedShaftStiffness({ ...stiffness, shearModulus: 0 }), "shearModulus");
  const bored = { ...stiffness, segments: [{ ...segment, boreDiameter: 40 * mm }] };
  refuses(() => steppedShaftStiffness(bored), "boreDiameter");
});

const lengths = between(0.01, 1);
property.prop([lengths, lengths])("cutting a shaft in two changes nothing", (first, second) => {
  const whole = [{ ...segment, length: first + second }];
  const cut = [first, second].map((length) => ({ ...segment, length }));
  const stiffness = (segments: typeof whole) => steppedShaftStiffness({ segments, shearModulus: 80 * GPa });
  nearly(stiffness(cut), stiffness(whole), 1e-12);
});
