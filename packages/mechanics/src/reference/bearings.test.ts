import { compareAtLeast, exact, type PublishedRow, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(159);

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

/** How far a book's reading of a chart may lie from the solved film. */
const CHART = 0.025;
/** The same for a straight line between two tabulated points that lie far apart. */
const FAR_POINTS = 0.035;

/** The row's bearing running on the films solved anew. */
function runningBearing(
  r: PublishedRow,
  {
    journalDiameter,
    length,
    radialClearance,
  }: Record<"journalDiameter" | "length" | "radialClearance", number>,
) {
  const [load, angularSpeed, viscosity] = [r.input("load"), r.input("speed"), r.input("viscosity")];
  const run = m.finiteBearing({ load, angularSpeed, viscosity, journalDiameter, length, radialClearance });
  const torque = run.frictionPower / angularSpeed;
  return { ...run, torque, coefficient: torque / ((load * journalDiameter) / 2) };
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
  const run = runningBearing(r, { journalDiameter: 2 * journalRadius, length, radialClearance });
  r.agrees("friction_coefficient", run.coefficient);
  r.agreesAsRead("friction_torque", run.torque, CHART);
  r.agrees("oil_flow", run.flow);
  r.agrees("side_flow", run.sideFlow);
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
  const [journalDiameter, length] = [r.input("diameter"), r.input("length")];
  const run = runningBearing(r, { journalDiameter, length, radialClearance });
  r.agreesAsRead("friction_coefficient", run.coefficient, FAR_POINTS);
  r.agreesAsRead("minimum_film", run.film, FAR_POINTS);
  r.agreesAsRead("oil_flow", run.flow, FAR_POINTS);
  r.agreesAsRead("power_loss", run.frictionPower, FAR_POINTS);
  // The book's relation has a density times heat capacity in it: 4 pi MPa over 8.3 K.
  const rise = m.oilTemperatureRise({
    frictionPower: run.frictionPower,
    flow: run.flow,
    density: 1,
    heatCapacity: (4 * Math.PI * 1e6) / 8.3,
  });
  r.agreesAsRead("temperature_rise", rise, FAR_POINTS);
});

row("JB-06", (r) => {
  const diameter = r.input("journal_diameter");
  const bearing = bearingOf(r, "journal_diameter", diameter * r.input("length_over_diameter"));
  const radialClearance = (r.input("bush_bore_diameter") - diameter) / 2;
  r.agrees("unit_load", bearing.unitLoad);
  r.agrees("S", m.sommerfeld({ ...bearing, viscosity: r.input("viscosity"), radialClearance }));
  const eccentricity = 1 - r.input("h0_over_c_from_chart");
  r.agrees("minimum_film", m.steadyFilm({ radialClearance, eccentricity }));
  const length = diameter * r.input("length_over_diameter");
  const run = runningBearing(r, { journalDiameter: diameter, length, radialClearance });
  r.agrees("minimum_film", run.film);
  r.agreesAsRead("friction_coefficient", run.coefficient, CHART);
  r.agreesAsRead("friction_torque", run.torque, CHART);
  r.agreesAsRead("power_loss", run.frictionPower, CHART);
  r.agreesAsRead("oil_flow", run.flow, CHART);
  r.agreesAsRead("side_flow", run.sideFlow, CHART);
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
