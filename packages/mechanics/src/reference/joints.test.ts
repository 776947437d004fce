import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(43);

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
});

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
  r.agrees("turn_angle", m.tighteningAngle({ ...springs, preload, pitch: r.input("pitch") }));
});

row("BJ-07", (r) => {
  const [area, preload] = [r.input("stress_area"), r.input("preload")];
  const yieldStrength = r.input("proof_strength");
  const loadFactor = r.input("joint_constant");
  const final = m.boltServiceLoad({ preload, loadFactor, externalLoad: r.input("external_load") });
  r.agrees("final_stress", final / area);
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
  r.agrees(
    "fatigue_factor_goodman",
    m.boltFatigueReserve({
      preloadStress: preload / area,
      amplitude: (service - preload) / area / 2,
      enduranceStrength: r.input("endurance_strength"),
      tensileStrength: r.input("tensile_strength"),
    }),
  );
});
