import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import { nearly } from "../check/support.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(63);

row("BJ-01", (r) => {
  const springs = {
    boltCompliance: 1 / r.input("bolt_stiffness"),
    clampedCompliance: 1 / r.input("member_stiffness"),
  };
  const loadFactor = m.loadFactor({ ...springs, introduction: 1 });
  const [preload, area] = [r.input("preload"), r.input("stress_area")];
  r.agrees("joint_constant", loadFactor);
  const service = m.boltServiceLoad({ preload, loadFactor, externalLoad: r.input("service_load") });
  r.agrees("bolt_service_stress", service / area);
  r.agrees("preload_stress", preload / area);
  const lead = r.input("mean_diameter");
  // A 3/4 in bolt of 16 threads to the inch, by its name.
  const [diameter, pitch] = [0.75 * INCH, INCH / 16];
  const torque = r.input("K") * preload * diameter;
  r.agrees("torque_K", torque);
  nearly(m.nutFactor({ torque, preload, majorDiameter: diameter }), r.input("K"));
  r.agrees("lead_angle", Math.atan(pitch / (Math.PI * lead)));
  const friction = r.input("friction");
  r.agrees("torque_screw_equation", screwTorque({ preload, diameter, pitch, pitchDiameter: lead, friction }));
});

row("BJ-06", (r) => {
  const [diameter, pitch] = [r.input("diameter"), r.input("pitch")];
  const { rootDiameter } = m.threadGeometry({ majorDiameter: diameter, pitch });
  const torque = screwTorque({
    preload: 1,
    diameter,
    pitch,
    // The book's mean diameter: of the root and the nominal one.
    pitchDiameter: (rootDiameter + diameter) / 2,
    friction: r.input("thread_friction"),
    collarFriction: r.input("collar_friction"),
  });
  r.agrees("K", m.nutFactor({ torque, preload: 1, majorDiameter: diameter }));
});

const INCH = 0.0254;

/** A joint constant as the books print it and go on with it. */
const printed = (loadFactor: number) => Math.round(1000 * loadFactor) / 1000;

/** Tightening torque by the exact wedge, the mean diameter under the head taken as 1.25 d as the books do. */
function screwTorque(screw: {
  preload: number;
  diameter: number;
  pitch: number;
  pitchDiameter: number;
  friction: number;
  collarFriction?: number;
}): number {
  const { preload, diameter, friction, collarFriction = friction } = screw;
  const thread = m.wedgeThreadTorque({ ...screw, threadFriction: friction });
  return thread + (preload * collarFriction * 1.25 * diameter) / 2;
}

for (const id of ["BJ-03", "BJ-04", "BJ-11"]) {
  row(id, (r) => {
    const thread = m.threadGeometry({ majorDiameter: r.input("nominal_diameter"), pitch: r.input("pitch") });
    const strengths = r.inputs("yield_strengths_8p8_10p9_12p9");
    for (const friction of r.inputs("friction_thread_equals_head")) {
      ["8p8", "10p9", "12p9"].forEach((grade, i) => {
        const name = `${grade}_mu${String(friction).replace(".", "p")}`;
        const preload = m.preloadForYieldUse({
          thread,
          threadFriction: friction,
          yieldStrength: strengths[i]!,
          use: 0.9,
        });
        r.agrees(`FM_${name}`, preload);
        const headFrictionDiameter = r.input("mean_head_friction_diameter_assumed");
        r.agrees(
          `MA_${name}`,
          m.torqueForPreload({
            ...thread,
            preload,
            threadFriction: friction,
            headFriction: friction,
            headFrictionDiameter,
          }),
        );
      });
    }
  });
}

row("BJ-05", (r) => {
  const segment = {
    length: r.input("length"),
    area: r.input("stress_area"),
    elasticModulus: r.input("modulus"),
  };
  const preload = r.input("proof_fraction") * r.input("proof_strength") * r.input("stress_area");
  r.agrees(exact("preload"), preload);
  r.agrees(exact("elongation"), m.boltStretch({ preload, segments: [segment] }));
  const springs = { boltCompliance: m.boltCompliance([segment]), clampedCompliance: 0 };
  r.agrees("torque", r.input("K") * preload * r.input("diameter"));
  r.agrees("turn_angle", m.tighteningAngle({ ...springs, preload, pitch: r.input("pitch") }));
});

row("BJ-07", (r) => {
  const [area, preload] = [r.input("stress_area"), r.input("preload")];
  const yieldStrength = r.input("proof_strength");
  const loadFactor = r.input("joint_constant");
  const final = m.boltServiceLoad({ preload, loadFactor, externalLoad: r.input("external_load") });
  r.agrees("final_stress", final / area);
  r.agrees("preload_stress", preload / area);
  r.agrees("torque", r.input("K") * preload * r.input("diameter"));
  r.agrees("final_over_proof", m.yieldUse({ preload: final, area, yieldStrength }));
});

row("BJ-08", (r) => {
  const headFrictionDiameter = (r.input("bearing_outer_diameter") + r.input("hole_diameter")) / 2;
  r.agrees(
    "torque_motosh",
    m.torqueForPreload({
      preload: r.input("clamp_force"),
      pitch: r.input("pitch"),
      pitchDiameter: r.input("pitch_diameter"),
      threadFriction: r.input("thread_friction"),
      headFriction: r.input("bearing_friction"),
      headFrictionDiameter,
    }),
  );
});

row("BJ-09", (r) => {
  const springs = {
    boltCompliance: 1 / r.input("bolt_stiffness"),
    clampedCompliance: 1 / r.input("member_stiffness"),
  };
  const loadFactor = m.loadFactor({ ...springs, introduction: 1 });
  const area = r.input("stress_area");
  const preload = r.input("preload_fraction_of_proof") * r.input("proof_strength") * area;
  const jointLoad = r.input("load_max");
  r.agrees("joint_constant", loadFactor);
  r.agrees("preload", preload);
  const service = m.boltServiceLoad({ preload, loadFactor, externalLoad: jointLoad });
  r.agrees("stress_amplitude", (service - preload) / area / 2);
  r.agrees("mean_stress", (service + preload) / area / 2);
  const lost = preload - m.residualClamp({ preload, bolts: 1, loadFactor, jointLoad, pryingFactor: 1 });
  r.agrees("separation_factor", preload / lost);
  r.agrees("separation_factor", m.separationReserve({ preload, loadFactor, jointLoad }));
  r.agrees("preload_stress", preload / area);
  const proofLoad = r.input("proof_strength") * area;
  r.agrees("proof_factor", proofLoad / service);
  r.agrees(
    "load_factor",
    m.overloadReserve({ preload, loadFactor: printed(loadFactor), jointLoad, greatestForce: proofLoad }),
  );
  const amplitude = (service - preload) / area / 2;
  const fatigue = m.boltFatigueReserve({
    preloadStress: preload / area,
    amplitude,
    enduranceStrength: r.input("endurance_strength"),
    tensileStrength: r.input("tensile_strength"),
  });
  r.agrees("fatigue_factor_goodman", fatigue);
  r.agrees("strength_amplitude_goodman", fatigue * amplitude);
});

row("BJ-10", (r) => {
  const [diameter, grip, area] = [r.input("diameter"), r.input("grip"), r.input("stress_area")];
  // The printed stiffness leaves out the tangent of 30° in its formula: cones of 45°.
  const clampedCompliance = m.pressureZoneCompliance({
    headDiameter: 1.5 * diameter,
    holeDiameter: diameter,
    outerDiameter: 1,
    tangent: 1,
    into: "nut",
    layers: [{ length: grip, elasticModulus: r.input("member_modulus") }],
  });
  // The bolt is taken at its nominal section over the grip.
  const boltCompliance = m.boltCompliance([
    { length: grip, area: (Math.PI / 4) * diameter ** 2, elasticModulus: r.input("bolt_modulus") },
  ]);
  r.agrees(exact("member_stiffness"), 1 / clampedCompliance);
  r.agrees(exact("bolt_stiffness"), 1 / boltCompliance);
  const loadFactor = m.loadFactor({ boltCompliance, clampedCompliance, introduction: 1 });
  r.agrees("joint_constant", loadFactor);
  const proofLoad = r.input("proof_strength") * area;
  const alone = m.overloadReserve({
    preload: r.input("preload_fraction") * proofLoad,
    loadFactor: printed(loadFactor),
    jointLoad: r.input("total_load"),
    greatestForce: proofLoad,
  });
  r.agrees("bolts_needed", r.input("factor_of_safety") / alone);
});

row("MA-06", (r) => {
  const rod = m.boreArea(r.input("rod_diameter"));
  const tube = m.boreArea(r.input("tube_outer_diameter")) - m.boreArea(r.input("tube_inner_diameter"));
  const grown = (expansion: string) => [
    { size: 1, expansion: r.input(expansion), temperatureRise: r.input("temperature_rise") },
  ];
  const compliance = (area: number, modulus: string) =>
    m.boltCompliance([{ length: 1, area, elasticModulus: r.input(modulus) }]);
  const force = m.thermalPreloadChange({
    boltCompliance: compliance(rod, "E_steel"),
    clampedCompliance: compliance(tube, "E_copper"),
    bolt: grown("cte_steel"),
    clamped: grown("cte_copper"),
  });
  r.agrees("stress_copper_compressive", force / tube);
  r.agrees("stress_steel_tensile", force / rod);
});
