import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(18);

const crankOf = (throwRadius: number, rodLength: number, pinLineOffset = 0): m.SliderCrank => ({
  throwRadius,
  rodLength,
  pinLineOffset,
});

row("SC-01", (r) => {
  const swept = r.input("total_displacement") / r.input("cylinders");
  const bore = Math.cbrt((4 * swept) / Math.PI);
  const crank = crankOf(bore / 2, r.input("rod_length"));
  const angle = r.input("crank_angle");
  const clearanceVolume = m.clearanceVolumeForRatio({
    sweptVolume: m.sweptVolume({ bore, stroke: m.pistonStroke(crank) }),
    compressionRatio: r.input("compression_ratio"),
  });
  r.agrees("bore", bore);
  r.agrees("stroke", m.pistonStroke(crank));
  r.agrees(
    "mean_piston_speed",
    m.meanPistonSpeed({ stroke: m.pistonStroke(crank), angularSpeed: r.input("speed") }),
  );
  r.agrees("clearance_volume_per_cylinder", clearanceVolume);
  r.agrees("piston_speed_at_angle", -m.pistonVelocity(crank, angle, r.input("speed")));
  r.agrees("piston_travel_from_tdc", m.pistonTravel(crank, angle));
  r.agrees("cylinder_volume_at_angle", m.cylinderVolumeAt({ crank, bore, clearanceVolume, angle }));
});

row("SC-02", (r) => {
  const crank = crankOf(r.input("crank_radius"), r.input("rod_length"));
  const found = m.greatestPistonSpeed(crank, r.input("speed"));
  r.agrees(exact("max_piston_velocity"), found.speed);
  r.agrees(exact("angle_of_max_velocity"), Math.min(found.angle, 2 * Math.PI - found.angle));
});

row("SC-03", (r) => {
  const crank = crankOf(r.input("crank_radius"), r.input("rod_length"));
  const [angle, speed] = [r.input("crank_angle"), r.input("speed")];
  r.agrees(exact("piston_velocity"), -m.pistonVelocity(crank, angle, speed));
  r.agrees(exact("piston_acceleration"), -m.pistonAcceleration(crank, angle, speed));
  const zero = m.greatestPistonSpeed(crank, speed).angle;
  r.agrees(exact("angle_of_zero_acceleration"), Math.min(zero, 2 * Math.PI - zero));
});

row("SC-07", (r) => {
  for (const ratio of r.inputs("rod_over_crank_radius")) {
    const crank = crankOf(1, ratio);
    const found = m.greatestPistonSpeed(crank, 1);
    const name = `R${ratio.toFixed(1).replace(".", "p")}`;
    r.agrees(
      `peak_over_mean_speed_${name}`,
      found.speed / m.meanPistonSpeed({ stroke: m.pistonStroke(crank), angularSpeed: 1 }),
    );
    r.agrees(`angle_of_peak_${name}`, Math.min(found.angle, 2 * Math.PI - found.angle));
  }
});
