import { compareAtLeast, exact, type PublishedRow, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(16);

row("CR-01", (r) => {
  const cylinder = { bore: r.input("bore"), stroke: r.input("stroke") };
  r.agrees("displacement", m.engineDisplacement({ ...cylinder, cylinders: r.input("cylinders") }));
  const sweptVolume = m.sweptVolume(cylinder);
  r.agrees(
    exact("clearance_volume_per_cylinder"),
    m.clearanceVolumeForRatio({ sweptVolume, compressionRatio: r.input("compression_ratio") }),
  );
});

row("CR-02", (r) => {
  const sweptVolume = m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") });
  const ratio = m.compressionRatio({ sweptVolume, clearanceVolume: r.input("clearance_volume") });
  r.agrees(exact("swept_volume"), sweptVolume);
  r.agrees(exact("compression_ratio"), ratio);
  r.agrees("compression_ratio", ratio);
});

row("CR-03", (r) => {
  const sweptVolume = m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") });
  r.agrees(
    "compression_ratio",
    m.compressionRatio({ sweptVolume, clearanceVolume: r.input("clearance_volume") }),
  );
});

row("CR-04", (r) => {
  const sweptVolume = m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") });
  const compressionRatio = r.input("compression_ratio");
  r.agrees(exact("clearance_volume"), m.clearanceVolumeForRatio({ sweptVolume, compressionRatio }));
});

row("CR-05", (r) => {
  const bore = r.input("bore");
  r.agrees("piston_area", m.boreArea(bore));
  r.agrees(exact("piston_area"), m.boreArea(bore));
  r.agrees(exact("displacement"), m.sweptVolume({ bore, stroke: r.input("stroke_for_displacement") }));
  const stroke = r.input("piston_travel_per_revolution") / 2;
  r.agrees("mean_piston_speed", m.meanPistonSpeed({ stroke, angularSpeed: r.input("speed") }));
});

/** Bore and stroke of the row's cylinder for a power at its mean effective pressure. */
function sizeFor(r: PublishedRow, power: number, revolutionsPerCycle: number): void {
  const perVolume = m.powerFromMeanEffectivePressure({
    angularSpeed: r.input("speed"),
    revolutionsPerCycle,
    displacement: 1,
    meanEffectivePressure: r.input("mean_effective_pressure"),
  });
  const swept = power / perVolume / r.input("cylinders");
  const bore = Math.cbrt((4 * swept) / (Math.PI * r.input("stroke_over_bore")));
  r.agrees("bore", bore);
  r.agrees("stroke", bore * r.input("stroke_over_bore"));
}

row("CR-06", (r) => sizeFor(r, r.input("power"), 2));

row("CR-07", (r) => {
  const power = r.input("brake_power");
  // The mean effective pressure is the indicated one; a two-stroke works at every turn.
  sizeFor(r, power / r.input("mechanical_efficiency"), 1);
  const perConsumption = m.thermalEfficiency({
    specificFuelConsumption: 1,
    heatingValue: r.input("fuel_heating_value"),
  });
  const specificFuelConsumption = perConsumption / r.input("brake_thermal_efficiency");
  r.agrees("fuel_flow", m.fuelFlow({ power, specificFuelConsumption }));
});
