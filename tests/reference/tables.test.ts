import { stressAreaUnified, threadGeometry } from "@trialfit/mechanics";
import { expect } from "vitest";
import type { FieldSpec } from "../../packages/core/src/read/FieldSpec.ts";
import { fields } from "../../packages/core/src/read/fieldCatalog.ts";
import { materials } from "../../packages/core/src/tables/materials.ts";
import { propertyClasses } from "../../packages/core/src/tables/propertyClasses.ts";
import { threads } from "../../packages/core/src/tables/threads.ts";
import { type ToleranceGrade, toleranceWidth } from "../../packages/core/src/tables/toleranceGrades.ts";
import { toSi } from "../../packages/core/src/units/convert.ts";
import { unitOf } from "../../packages/core/src/units/findUnit.ts";
import { parseDimension } from "../../packages/core/src/units/parseDimension.ts";
import { rationalFromDecimal } from "../../packages/core/src/units/Rational.ts";
import {
  compareAtLeast,
  exact,
  type PublishedRow,
  row,
} from "../../packages/mechanics/src/check/published.test-support.ts";

compareAtLeast(90);

/** A table that keeps the printed number itself. */
const ROUNDING = 1e-7;
const isListed = (r: PublishedRow, name: string, value: number) =>
  r.lies(name, value * (1 - ROUNDING), value * (1 + ROUNDING));

/** One of a unit in SI. */
const one = (unit: string) => toSi(rationalFromDecimal("1")!, unitOf(unit));
const MEGAPASCAL = 1e6;
const kinds = ["proof", "yield", "tensile"] as const;

row("TH-09", (r) => {
  for (const [grade, key] of [
    ["8.8", "8p8"],
    ["10.9", "10p9"],
    ["12.9", "12p9"],
  ] as const)
    for (const kind of kinds) isListed(r, `${kind}_${key}`, propertyClasses[grade]![kind] * MEGAPASCAL);
});

/** Diameter and pitch of a thread of the table [m]. */
function sizesOf(name: string) {
  const { diameter, pitch } = threads[name]!;
  const size = (text: string) => parseDimension(text, { unit: "mm" }).nominal;
  return { majorDiameter: size(diameter), pitch: size(pitch) };
}

row("TH-07", (r) => {
  for (const grade of [5, 8])
    for (const kind of kinds)
      isListed(r, `grade${grade}_${kind}`, propertyClasses[`grade-${grade}`]![kind] * MEGAPASCAL);
  const proof = propertyClasses["grade-8"]!.proof * MEGAPASCAL;
  r.agrees(exact("proof_load_7_16_20_grade8"), proof * r.input("At_7_16_20"));
  expect(stressAreaUnified(sizesOf("7/16-20")) / r.input("At_7_16_20")).toBeCloseTo(1, 3);
});

const coarse = [
  ["M8", "M8x1.25"],
  ["M10", "M10x1.5"],
  ["M12", "M12x1.75"],
] as const;
const coarseArea = (name: string) => threadGeometry(sizesOf(name)).stressArea;

row("TH-03", (r) => {
  for (const [size, name] of coarse)
    for (const [grade, key] of [
      ["8.8", "8p8"],
      ["10.9", "10p9"],
    ] as const) {
      const load = propertyClasses[grade]!.tensile * MEGAPASCAL * coarseArea(name);
      r.agrees(`ultimate_load_${key}_${size}`, load);
    }
});

row("TH-04", (r) => {
  for (const [size, name] of coarse)
    r.agrees(`proof_load_10p9_${size}`, propertyClasses["10.9"]!.proof * MEGAPASCAL * coarseArea(name));
});

/** The stress area that the table lists beside a thread [m2]. */
const listedArea = (name: string) => {
  const [, digits, unit] = /^([\d.]+) (\w+)$/.exec(threads[name]!.stressArea!)!;
  return Number(digits) * one(unit!);
};
for (const [id, symbol, names] of [
  ["TH-01", "As", { M6: "M6x1", M8: "M8x1.25", M10: "M10x1.5", M12: "M12x1.75" }],
  ["TH-05", "At", byName("1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13")],
  ["TH-06", "At", byName("1/4-28", "3/8-24", "7/16-20")],
] as const) {
  row(id, (r) => {
    for (const [key, name] of Object.entries<string>(names))
      isListed(r, `${symbol}_${key}`, listedArea(name));
  });
}

/** Threads of the table by their names as the rows spell them. */
function byName(...names: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(names.map((name) => [name.replace(/[/-]/g, "_"), name]));
}

/** What one of a material's numbers is in SI. */
const scales = { expansion: 1e-6, modulus: 1e9, density: 1, poisson: 1 } as const;
const holds = (
  id: string,
  numbers: readonly (readonly [string, keyof typeof materials, keyof typeof scales])[],
) =>
  row(id, (r) => {
    for (const [name, material, property] of numbers) {
      const { usual, spread } = materials[material][property];
      const scale = scales[property];
      r.lies(name, (usual - spread) * scale, (usual + spread) * scale);
    }
  });

holds("MA-01", [
  ["E_steel_4340", "steel", "modulus"],
  ["E_cast_aluminium_356p0", "cast-aluminium", "modulus"],
  ["E_grey_iron_G3000_low", "grey-iron", "modulus"],
  ["E_grey_iron_G3000_high", "grey-iron", "modulus"],
  ["E_ductile_iron_60_40_18", "ductile-iron", "modulus"],
]);
holds("MA-02", [
  ["cte_steel_4340", "steel", "expansion"],
  ["cte_grey_iron", "grey-iron", "expansion"],
  ["cte_cast_aluminium_356p0", "cast-aluminium", "expansion"],
  ["cte_Ti_6Al_4V", "titanium", "expansion"],
]);
holds("MA-03", [
  ["density_steel_4340", "steel", "density"],
  ["density_grey_iron", "grey-iron", "density"],
  ["density_ductile_iron", "ductile-iron", "density"],
]);
holds("MA-04", [
  ["E_carbon_steel", "steel", "modulus"],
  ["poisson_carbon_steel", "steel", "poisson"],
  ["E_aluminium", "wrought-aluminium", "modulus"],
  ["E_cast_iron", "grey-iron", "modulus"],
  ["E_titanium", "titanium", "modulus"],
]);

for (const id of ["FT-01", "FT-02"]) {
  row(id, (r) => {
    for (const name of r.names) {
      const [, grade, least, most] = /^IT(\d+)_(\d+)_(\d+)$/.exec(name)!;
      const width = (size: number) => toleranceWidth(Number(grade) as ToleranceGrade, size / 1000)!;
      // A range has its upper end and not its lower one.
      for (const size of [Number(least) + 0.01, Number(most) - 0.01, Number(most)])
        isListed(r, name, width(size));
    }
  });
}

row("FT-03", (r) => {
  const nominal = r.input("nominal");
  const below = -r.input("shaft_upper");
  const [hole, shaft] = [toleranceWidth(8, nominal)!, toleranceWidth(7, nominal)!];
  isListed(r, "max_clearance", hole + below + shaft);
  isListed(r, "min_clearance", below);
  isListed(r, "shaft_upper_limit", nominal - below);
  isListed(r, "shaft_lower_limit", nominal - below - shaft);
});

/** The default that a field has for a fuel, with its tolerance, in SI. */
function usualOf(path: string, fuel: string) {
  const spec = fields.get(path)!.spec as FieldSpec & { readonly kind: "dimension" };
  const { assumed } = spec;
  if (assumed === undefined || !("values" in assumed)) throw new Error(`${path} has no default by fuel`);
  const { nominal, minus = 0, plus = 0 } = parseDimension(assumed.values[fuel]!.value, { unit: spec.unit });
  return [nominal - minus, nominal + plus] as const;
}

row("TD-15", (r) => {
  r.lies("methanol", ...usualOf("fuel.stoichiometricRatio", "methanol"));
  r.lies("gasoline_CH1p87", ...usualOf("fuel.stoichiometricRatio", "petrol"));
});

row("TD-17", (r) => {
  r.lies("gasoline_si", ...usualOf("fuel.heatingValue", "petrol"));
  r.lies("ethanol_si", ...usualOf("fuel.heatingValue", "ethanol"));
});

for (const [id, symbols] of [
  ["UN-01", { lbf: "lbf", psi: "psi", cubic_inch: "in3" }],
  ["UN-02", { horsepower: "hp", lbf_ft: "lbf ft" }],
  ["UN-03", { inHg: "inHg", atm: "atm" }],
] as const) {
  row(id, (r) => {
    for (const [name, symbol] of Object.entries(symbols)) r.agrees(name, one(symbol));
  });
}
