import { compareAtLeast, row } from "../check/published.test-support.ts";
import { solveIncreasing } from "../check/solveIncreasing.ts";
import * as m from "../index.ts";

compareAtLeast(28);

row("MA-05", (r) => {
  const part = {
    size: r.input("length"),
    expansion: r.input("expansion"),
    temperatureRise: r.input("temperature_end") - r.input("temperature_start"),
  };
  r.agrees("expansion", m.thermalGrowth(part));
  // A rod between rigid walls: a bolt that grows while what it clamps does not.
  const force = m.thermalPreloadChange({
    boltCompliance: m.boltCompliance([{ length: part.size, area: 1, elasticModulus: r.input("modulus") }]),
    clampedCompliance: 0,
    bolt: [part],
    clamped: [],
  });
  r.agrees("restrained_stress", -force);
});

row("MA-07", (r) => {
  const grown = (expansion: string) =>
    m.thermalGrowth({
      size: r.input("length"),
      expansion: r.input(expansion),
      temperatureRise: r.input("temperature_rise"),
    });
  r.agrees("aluminium_growth", grown("cte_aluminium"));
  r.agrees("stud_growth", grown("cte_stud"));
  r.agrees("difference", grown("cte_aluminium") - grown("cte_stud"));
});

row("CY-01", (r) => {
  const [inner, outer] = [r.input("inner_radius"), r.input("outer_radius")];
  const wall = { bore: 2 * inner, wall: outer - inner };
  const pressure = r.input("internal_pressure");
  r.agrees("hoop_stress_r10", m.thickCylinderHoopStress({ ...wall, pressure }));
  r.agrees("hoop_stress_r50", hoopAtRim({ ...wall, pressure }));
  // What the inner layers leave for the outer ones presses on these as on a cylinder of their own.
  const layers = { bore: 2 * 0.025, wall: outer - 0.025 };
  const left = hoopAtRim({ ...wall, pressure }) / hoopAtRim({ ...layers, pressure: 1 });
  r.agrees("radial_stress_r25", -left);
  r.agrees("hoop_stress_r25", m.thickCylinderHoopStress({ ...layers, pressure: left }));
});

/** Hoop stress outside: by Lamé the hoop and the radial stress have one sum through the whole wall. */
const hoopAtRim = (cylinder: { bore: number; wall: number; pressure: number }) =>
  m.thickCylinderHoopStress(cylinder) - cylinder.pressure;

/**
 * Compressive hoop stress at the bore of a cylinder pressed from outside: pressed from both sides it is even, and
 * what the inside adds is taken off.
 */
const hoopPressedFromOutside = (cylinder: { bore: number; wall: number; pressure: number }) =>
  -cylinder.pressure - m.thickCylinderHoopStress(cylinder);

row("CY-03", (r) => {
  const steel = { elasticModulus: r.input("modulus"), poissonRatio: 0.3 };
  const diameter = 2 * r.input("interface_radius");
  const outerDiameter = 2 * r.input("outer_radius");
  const pressure = m.pressFitPressure({
    interference: 2 * r.input("radial_interference"),
    diameter,
    outerDiameter,
    innerBore: 2 * r.input("inner_radius"),
    // Alike metals: their Poisson's ratio plays no part.
    outer: steel,
    inner: steel,
  });
  r.agrees("contact_pressure", pressure);
  const outside = m.pressFitHoopStress({ pressure, diameter, outerDiameter });
  r.agrees("hoop_outer_inside", outside);
  r.agrees("hoop_outer_rim", outside - pressure);
  const innerBore = 2 * r.input("inner_radius");
  const inside = hoopPressedFromOutside({ pressure, bore: innerBore, wall: (diameter - innerBore) / 2 });
  r.agrees("hoop_inner_bore", inside);
  r.agrees("hoop_inner_outside", inside + pressure);
});

row("CY-05", (r) => {
  const diameter = 2 * r.input("interface_radius");
  const outerDiameter = 2 * r.input("boss_outer_radius");
  const pressure = m.pressFitPressure({
    interference: 2 * r.input("radial_interference"),
    diameter,
    outerDiameter,
    innerBore: 2 * r.input("pin_inner_radius"),
    outer: { elasticModulus: r.input("E_boss"), poissonRatio: r.input("poisson_boss") },
    inner: { elasticModulus: r.input("E_pin"), poissonRatio: r.input("poisson_pin") },
  });
  r.agrees("contact_pressure", pressure);
  r.agrees("boss_hoop_at_interface", m.pressFitHoopStress({ pressure, diameter, outerDiameter }));
  const bore = 2 * r.input("pin_inner_radius");
  const pin = hoopPressedFromOutside({ pressure, bore, wall: (diameter - bore) / 2 });
  r.agrees("pin_hoop_at_interface", pin + pressure);
});

row("CY-06", (r) => {
  const [inner, outer] = [r.input("inner_diameter"), r.input("outer_diameter")];
  const cylinder = { pressure: 1, bore: inner, wall: (outer - inner) / 2 };
  r.agrees("internal_pressure", r.input("hoop_limit") / m.thickCylinderHoopStress(cylinder));
  r.agrees("external_pressure", -r.input("hoop_limit") / hoopPressedFromOutside(cylinder));
});

row("CY-07", (r) => {
  const wall = { bore: r.input("inner_diameter_1"), wall: r.input("thickness_1") };
  r.agrees("hoop_max", m.thickCylinderHoopStress({ ...wall, pressure: r.input("pressure_1") }));
  r.agrees("hoop_min", hoopAtRim({ ...wall, pressure: r.input("pressure_1") }));
  const [pressure, bore] = [r.input("pressure_2"), r.input("inner_diameter_2")];
  const spare = (thickness: number) =>
    r.input("allowable_2") - m.thickCylinderHoopStress({ pressure, bore, wall: thickness });
  r.agrees("thickness", solveIncreasing(spare, bore / 100, bore, bore * 1e-9));
});

row("BA-05", (r) => {
  const unbalance = m.residualUnbalance({
    grade: r.input("grade"),
    rotorMass: r.input("rotor_mass"),
    angularSpeed: r.input("speed"),
  });
  r.agrees("U_per", unbalance);
  r.agrees("e_per", unbalance / r.input("rotor_mass"));
});

row("BA-07", (r) => {
  const found = m.bobweight({
    rods: r.input("rods_per_pin"),
    rotatingRodMass: r.input("rotating_mass_per_rod"),
    shellMass: 0,
    oilMass: 0,
    reciprocatingMass: r.input("reciprocating_mass_per_cylinder"),
    balanceFactor: r.input("reciprocating_fraction"),
  });
  r.agrees("bobweight", found);
});

row("PR-03", (r) => {
  const force = m.gasForce({
    cylinderPressure: r.input("peak_pressure"),
    casePressure: 0,
    bore: r.input("bore"),
  });
  r.agrees("gas_load", force);
  const perDiameter = m.bearingPressure({ force, diameter: 1, length: r.input("small_end_length") });
  r.agrees("pin_diameter", perDiameter / r.input("bearing_pressure"));
});

row("PR-04", (r) => {
  const head = { pressure: r.input("peak_pressure"), radius: r.input("bore") / 2 };
  r.agrees("head_thickness", m.heldPlateThickness({ ...head, stress: r.input("head_stress") }));
  const perThickness = m.ringBendingStress({
    pressure: r.input("ring_wall_pressure"),
    bore: r.input("bore"),
    radialThickness: 1,
  });
  r.agrees("ring_radial_thickness", Math.sqrt(perThickness / r.input("ring_stress")));
});
