import { expect } from "vitest";
import { compareAtLeast, printedRow } from "../check/published.test-support.ts";
import { near } from "../check/support.test-support.ts";
import { equivalentShaftLength, steppedShaftStiffness } from "./equivalentShaftLength.ts";
import { holzerResidual } from "./holzerResidual.ts";
import type { TorsionalChain } from "./TorsionalChain.ts";
import { torsionalModes } from "./torsionalModes.ts";

compareAtLeast(15);

const inch = 0.0254;
const foot = 12 * inch;
const pound = 0.45359237;
/** Torque and pressure of the books' inch units in SI, with the books' own g in ft/s2. */
const poundForce = (g: number) => pound * g * foot;

const hertz = (angularFrequency: number) => angularFrequency / (2 * Math.PI);

printedRow("TO-01", 5, (r) => {
  const modes = torsionalModes({ inertias: r.inputs("inertias"), stiffnesses: r.inputs("stiffnesses") });
  modes.forEach((mode, i) => {
    r.agrees(`f${i}`, hertz(mode.angularFrequency));
  });
});

/** Frequencies [Hz] at which Holzer's table leaves nothing over: a change of sign from hertz to hertz, then halved. */
function holzerFrequencies(chain: TorsionalChain, most: number): readonly number[] {
  const left = (frequency: number) =>
    holzerResidual({ chain, angularFrequency: 2 * Math.PI * frequency }).torque;
  const found: number[] = [];
  for (let frequency = 1; frequency < most; frequency++) {
    let [low, high] = [frequency, frequency + 1];
    if (left(low) > 0 === left(high) > 0) continue;
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (left(middle) > 0 === left(low) > 0) low = middle;
      else high = middle;
    }
    found.push(low);
  }
  return found;
}

printedRow("TO-01", 4, (r) => {
  const chain = { inertias: r.inputs("inertias"), stiffnesses: r.inputs("stiffnesses") };
  const found = holzerFrequencies(chain, 2000);
  expect(found.length).toBe(4);
  found.forEach((frequency, i) => {
    r.agrees(`f${i + 1}`, frequency);
  });
});

printedRow("TO-02", 1, (r) => {
  const modes = torsionalModes({ inertias: r.inputs("inertias"), stiffnesses: r.inputs("stiffness") });
  r.agrees("f1", hertz(modes[1]!.angularFrequency));
});

printedRow("TO-03", 3, (r) => {
  const diameters = r.inputs("segment_diameters");
  const segments = r.inputs("segment_lengths").map((length, i) => ({
    length: length * inch,
    diameter: diameters[i]! * inch,
    boreDiameter: 0,
  }));
  const referenceDiameter = r.input("reference_diameter") * inch;
  const shearModulus = (r.input("shear_modulus") * poundForce(r.input("g"))) / inch ** 2;
  const inertias = ["I1", "I2"].map((name) => r.input(name) * pound * foot ** 2);
  const stiffness = steppedShaftStiffness({ segments, shearModulus });
  const mode = torsionalModes({ inertias, stiffnesses: [stiffness] })[1]!;
  const length = equivalentShaftLength({ segments, referenceDiameter });
  r.agrees("f1", hertz(mode.angularFrequency));
  r.agrees("equivalent_length__recomputed_exact", length / inch);
  // The twist of the uniform shaft runs straight from one disc to the other, through zero at the node.
  const [first, last] = mode.shape as [number, number];
  r.agrees("node_distance_from_I1__recomputed_exact", (length * first) / (first - last) / inch);
  const uniform = [{ length, diameter: referenceDiameter, boreDiameter: 0 }];
  near(steppedShaftStiffness({ segments: uniform, shearModulus }) / stiffness, 1, 1e-12);
});

for (const [id, lengthsName, lengthUnit] of [
  ["TO-04", "length", inch],
  ["TO-07", "lengths", foot],
] as const) {
  printedRow(id, 1, (r) => {
    const shearModulus = (r.input("shear_modulus") * poundForce(r.input("g"))) / inch ** 2;
    const diameter = r.input("diameter") * inch;
    const stiffness = r
      .inputs(lengthsName)
      .map((length) => [{ length: length * lengthUnit, diameter, boreDiameter: 0 }])
      .reduce((sum, segments) => sum + steppedShaftStiffness({ segments, shearModulus }), 0);
    const inertia = r.input("weight") * pound * (r.input("radius_of_gyration") * inch) ** 2;
    // A held end is a disc too heavy to turn.
    const modes = torsionalModes({ inertias: [inertia, inertia * 1e9], stiffnesses: [stiffness] });
    r.agrees("torsional_frequency", 60 * hertz(modes[1]!.angularFrequency));
  });
}
