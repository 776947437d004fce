import { expect } from "vitest";
import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(16);

const crankOf = (throwRadius: number, rodLength: number, pinLineOffset = 0): m.SliderCrank => ({
  throwRadius,
  rodLength,
  pinLineOffset,
});

row("SC-04", (r) => {
  const crank = crankOf(r.input("crank_radius"), r.input("rod_length"));
  const angle = r.input("crank_angle");
  const gasForce = m.gasForce({
    cylinderPressure: r.input("pressure_difference"),
    casePressure: 0,
    bore: r.input("bore"),
  });
  const rodForce = m.rodAxialForce({
    crank,
    angle,
    angularSpeed: r.input("speed"),
    reciprocatingMass: r.input("reciprocating_mass"),
    gasForce,
  });
  r.agrees(exact("rod_thrust"), rodForce);
  r.agrees(exact("side_force"), m.sideThrust({ rodForce, rodAngle: m.rodAngle(crank, angle) }));
  const torque = m.crankTorque({ crank, angle, rodForce });
  r.agrees(exact("turning_moment"), torque);
  r.agrees(exact("tangential_force"), torque / crank.throwRadius);
});

row("SC-05", (r) => {
  const crank = crankOf(r.input("crank_radius"), r.input("rod_length"));
  const angle = r.input("crank_angle");
  const mass = r.input("reciprocating_mass");
  const gasForce = m.gasForce({
    cylinderPressure: r.input("gas_pressure"),
    casePressure: 0,
    bore: r.input("bore"),
  });
  const at = (angularSpeed: number) =>
    m.rodAxialForce({ crank, angle, angularSpeed, reciprocatingMass: mass, gasForce });
  const rodForce = at(r.input("speed"));
  const phi = m.rodAngle(crank, angle);
  r.agrees(exact("net_pin_load"), rodForce * Math.cos(phi));
  r.agrees(exact("rod_thrust"), rodForce);
  r.agrees(exact("wall_reaction"), m.sideThrust({ rodForce, rodAngle: phi }));
  const vanishing = Math.sqrt(gasForce / (-mass * m.pistonAcceleration(crank, angle, 1)));
  r.agrees(exact("speed_for_zero_pin_load"), vanishing);
  expect(Math.abs(at(vanishing))).toBeLessThan(1e-9);
});

row("SC-06", (r) => {
  const crank = crankOf(r.input("stroke") / 2, r.input("rod_length"));
  const angle = r.input("crank_angle");
  const area = m.boreArea(r.input("bore"));
  const crankEnd = area - m.boreArea(r.input("piston_rod_diameter"));
  const rodForce = m.rodAxialForce({
    crank,
    angle,
    angularSpeed: r.input("speed"),
    reciprocatingMass: r.input("reciprocating_mass"),
    gasForce: r.input("cover_end_pressure") * area - r.input("crank_end_pressure") * crankEnd,
  });
  r.agrees(exact("turning_moment"), m.crankTorque({ crank, angle, rodForce }));
  r.agrees(exact("main_bearing_thrust"), rodForce * Math.cos(angle + m.rodAngle(crank, angle)));
});

row("SC-08", (r) => {
  const angle = r.input("crank_angle");
  const gas = m.gasForce({
    cylinderPressure: r.input("gas_pressure"),
    casePressure: 0,
    bore: r.input("bore"),
  });
  const forces = (pinLineOffset: number) => {
    const crank = crankOf(r.input("stroke") / 2, r.input("rod_length"), pinLineOffset);
    const gasForce = gas - r.input("piston_friction_force");
    const rodForce = m.rodAxialForce({ crank, angle, angularSpeed: 0, reciprocatingMass: 0, gasForce });
    return { rodForce, side: m.sideThrust({ rodForce, rodAngle: m.rodAngle(crank, angle) }) };
  };
  r.agrees("rod_force", forces(0).rodForce);
  r.agrees("side_thrust_no_offset", forces(0).side);
  r.agrees("side_thrust_with_offset", forces(r.input("pin_offset")).side);
});

row("SC-13", (r) => {
  const crank = crankOf(r.input("stroke") / 2, r.input("rod_length"));
  const angle = r.input("crank_angle");
  const area = m.boreArea(r.input("bore"));
  const mass = r.input("reciprocating_mass");
  const below = area - m.boreArea(r.input("piston_rod_diameter"));
  const rodForce = m.rodAxialForce({
    crank,
    angle,
    angularSpeed: r.input("speed"),
    reciprocatingMass: mass,
    gasForce: r.input("pressure_top") * area - r.input("pressure_bottom") * below + mass * 9.81,
  });
  r.agrees(exact("turning_moment"), m.crankTorque({ crank, angle, rodForce }));
});

row("SC-11", (r) => {
  const crank = crankOf(r.input("stroke") / 2, r.input("rod_length"));
  const angle = r.input("crank_angle");
  const area = m.boreArea(r.input("bore"));
  const crankSide = area - m.boreArea(r.input("piston_rod_diameter"));
  const gasForce = r.input("pressure_cover_side") * area - r.input("pressure_crank_side") * crankSide;
  const rodForce = m.rodAxialForce({ crank, angle, angularSpeed: 0, reciprocatingMass: 0, gasForce });
  r.agrees(exact("torque"), m.crankTorque({ crank, angle, rodForce }));
});

row("SC-12", (r) => {
  const crank = crankOf(r.input("stroke") / 2, r.input("rod_length"));
  // The rod stands at right angles to the throw.
  const rodAngle = m.rodAngle(crank, Math.atan(crank.rodLength / crank.throwRadius));
  r.agrees("side_thrust", m.sideThrust({ rodForce: r.input("rod_force"), rodAngle }));
});
