import { compareAtLeast, exact, type PublishedRow, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(144);

/** The films of Raimondi and Boyd, solved anew and from the table of solved films. */
for (const id of ["JB-01", "JB-02"]) {
  row(id, (r) => {
    for (const eccentricity of r.inputs("eccentricity_ratio")) {
      for (const filmOf of [m.reynoldsFilm, m.finiteFilm]) {
        const film = filmOf({ eccentricity, lengthRatio: r.input("length_over_diameter") });
        const at = `e${String(eccentricity).replace(".", "p")}`;
        r.agrees(`S_${at}`, film.sommerfeld);
        r.agrees(`attitude_angle_${at}`, film.attitude);
        r.agrees(`friction_variable_${at}`, film.friction);
        r.agrees(`flow_variable_${at}`, film.flow);
        r.agrees(`side_flow_ratio_${at}`, film.sideFlowShare);
        r.agrees(`P_over_pmax_${at}`, film.pressureRatio);
      }
    }
  });
}

const bearingOf = (r: PublishedRow, diameter: string, length: number) => ({
  angularSpeed: r.input("speed"),
  unitLoad: m.unitLoad({ force: r.input("load"), journalDiameter: r.input(diameter), shellLength: length }),
  journalRadius: r.input(diameter) / 2,
});

row("JB-03", (r) => {
  const [journalRadius, length] = [r.input("radius"), r.input("length")];
  const unitLoad = m.unitLoad({
    force: r.input("load"),
    journalDiameter: 2 * journalRadius,
    shellLength: length,
  });
  r.agrees("unit_load", unitLoad);
  const film = m.steadyFilm({
    radialClearance: r.input("radial_clearance"),
    eccentricity: 1 - r.input("h0_over_c_from_chart"),
  });
  r.agrees("minimum_film", film);
  r.agrees("eccentricity", r.input("radial_clearance") - film);
  const viscosity = r.input("viscosity");
  const [radialClearance, angularSpeed] = [r.input("radial_clearance"), r.input("speed")];
  r.agrees("S", m.sommerfeld({ viscosity, angularSpeed, unitLoad, journalRadius, radialClearance }));
  r.agrees("peak_pressure", unitLoad / r.input("P_over_pmax_from_chart"));
});

row("JB-04", (r) => {
  const power = m.petroffPower({
    viscosity: r.input("viscosity"),
    angularSpeed: r.input("speed"),
    journalRadius: r.input("diameter") / 2,
    length: r.input("length"),
    radialClearance: r.input("radial_clearance"),
  });
  r.agrees("power_loss", power);
  r.agrees("friction_torque", power / r.input("speed"));
  r.agrees("friction_coefficient", power / r.input("speed") / (r.input("load") * (r.input("diameter") / 2)));
});

row("JB-05", (r) => {
  const bearing = bearingOf(r, "diameter", r.input("length"));
  const radialClearance = r.input("radial_clearance");
  r.agrees(exact("S"), m.sommerfeld({ ...bearing, viscosity: r.input("viscosity"), radialClearance }));
});

row("JB-06", (r) => {
  const diameter = r.input("journal_diameter");
  const bearing = bearingOf(r, "journal_diameter", diameter * r.input("length_over_diameter"));
  const radialClearance = (r.input("bush_bore_diameter") - diameter) / 2;
  r.agrees("unit_load", bearing.unitLoad);
  r.agrees("S", m.sommerfeld({ ...bearing, viscosity: r.input("viscosity"), radialClearance }));
  const eccentricity = 1 - r.input("h0_over_c_from_chart");
  r.agrees("minimum_film", m.steadyFilm({ radialClearance, eccentricity }));
});

row("JB-07", (r) => {
  for (const eccentricity of r.inputs("eccentricity_ratio")) {
    const bearing = {
      viscosity: 0.01,
      angularSpeed: 500,
      journalDiameter: 0.05,
      length: 0.02,
      radialClearance: 3e-5,
    };
    const load = m.shortBearingLoad({ ...bearing, eccentricity });
    const unitLoad = m.unitLoad({ force: load, journalDiameter: 0.05, shellLength: 0.02 });
    const sommerfeld = m.sommerfeld({ ...bearing, unitLoad, journalRadius: 0.025 });
    const name = `e${String(eccentricity).replace(".", "p")}`;
    r.agrees(`S_times_LD2_${name}`, sommerfeld * (0.02 / 0.05) ** 2);
    r.agrees(`attitude_angle_${name}`, m.shortBearingAttitude(eccentricity));
  }
});

row("JB-09", (r) => {
  for (const [i, name] of ["h0_min_d1", "h0_min_d2", "h0_min_d2p5"].entries())
    r.agrees(name, m.trumplerFilm(r.inputs("diameter")[i]!));
});

row("JB-08", (r) => {
  const bearing = bearingOf(r, "diameter", r.input("length"));
  const perViscosity = m.sommerfeld({
    ...bearing,
    viscosity: 1,
    radialClearance: r.input("radial_clearance"),
  });
  r.agrees("viscosity", r.input("S_at_h0_over_c_0p2") / perViscosity);
});
