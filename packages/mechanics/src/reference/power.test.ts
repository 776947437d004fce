import { compareAtLeast, exact, type PublishedRow, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(49);

/** Thermal efficiency of a power from a fuel flow of the row's fuel. */
const efficiencyOf = (r: PublishedRow, fuelFlow: number, power: number) =>
  m.thermalEfficiency({
    specificFuelConsumption: fuelFlow / power,
    heatingValue: r.input("fuel_heating_value"),
  });

/** The row's four-stroke engine, by its bore, stroke, cylinders and speed. */
const engineOf = (r: PublishedRow) => ({
  displacement: m.engineDisplacement({
    bore: r.input("bore"),
    stroke: r.input("stroke"),
    cylinders: r.input("cylinders"),
  }),
  angularSpeed: r.input("speed"),
  revolutionsPerCycle: 2,
});

/** Volumetric efficiency by what an orifice meters, its head as metres times the density of its liquid [kg/m2]. */
function meteredEfficiency(
  r: PublishedRow,
  { head, ...air }: Record<"head" | "pressure" | "temperature", number>,
): number {
  // The books' gas constant is 287, and their gravity 9.81.
  const density = (m.airDensity(air) * 287.05) / 287;
  const velocity = Math.sqrt((2 * head * 9.81) / density);
  const volume = r.input("discharge_coefficient") * m.boreArea(r.input("orifice_diameter")) * velocity;
  const airMassFlow = (volume * density * 287) / 287.05;
  return m.volumetricEfficiency({ ...engineOf(r), ...air, airMassFlow });
}

for (const id of ["TD-01", "TD-03", "TD-22"]) {
  row(id, (r) => {
    const compression = { trappedCompressionRatio: 6, polytropicExponent: r.input("gamma") };
    if (id === "TD-01") {
      compression.trappedCompressionRatio = m.compressionRatio({
        sweptVolume: m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") }),
        clearanceVolume: r.input("clearance_volume"),
      });
      const inletTemperature = r.input("T1");
      r.agrees("T2", m.compressionTemperature({ ...compression, inletTemperature }) - 273.15);
    } else {
      compression.trappedCompressionRatio = r.input("compression_ratio");
      r.agrees("T2", m.compressionTemperature({ ...compression, inletTemperature: r.input("T1") }));
    }
    r.agrees("p2", m.compressionPressure({ ...compression, inletPressure: r.input("p1") }));
  });
}

row("TD-07", (r) => {
  const outlet = m.compressorOutletTemperature({
    inletTemperature: r.input("T1"),
    pressureRatio: r.input("p2") / r.input("p1"),
    efficiency: r.input("isentropic_efficiency"),
    heatCapacityRatio: 1.4,
  });
  r.agrees(exact("compressor_outlet_temperature"), outlet);
  const airMassFlow =
    (r.input("volumetric_efficiency_on_ambient") *
      m.airDensity({ pressure: r.input("p1"), temperature: r.input("T1") }) *
      r.input("displacement") *
      r.input("speed")) /
    (4 * Math.PI);
  // The book's gas constant is 287.
  const bookFlow = (airMassFlow * 287.05) / r.input("R");
  r.agrees(exact("air_flow"), bookFlow);
  // The cooler takes what a compressor without loss would spend on the same rise.
  const rejected = m.compressorPower({
    airMassFlow: bookFlow,
    inletTemperature: r.input("aftercooler_outlet"),
    outletTemperature: outlet,
    mechanicalEfficiency: 1,
  });
  r.agrees("heat_rejected", rejected);
  r.agrees(
    "drive_power",
    m.compressorPower({
      airMassFlow,
      inletTemperature: r.input("T1"),
      outletTemperature: outlet,
      mechanicalEfficiency: r.input("mechanical_efficiency"),
    }),
  );
});

row("TD-06", (r) => {
  const [inletTemperature, gasConstant] = [r.input("T1"), r.input("R")];
  const ratio = r.input("p2") / r.input("p1");
  const work = (pressureRatio: number, exponent: number) => {
    const outletTemperature = m.compressorOutletTemperature({
      inletTemperature,
      pressureRatio,
      efficiency: 1,
      heatCapacityRatio: exponent,
    });
    const power = m.compressorPower({
      airMassFlow: 1,
      inletTemperature,
      outletTemperature,
      mechanicalEfficiency: 1,
    });
    // By the book's gas and exponent in place of the heat capacity of air.
    return (power * gasConstant * exponent) / (exponent - 1) / 1005;
  };
  r.agrees("isentropic", work(ratio, r.input("k")));
  r.agrees("polytropic", work(ratio, r.input("n")));
  // Cooled to the inlet's temperature between two stages of one ratio.
  r.agrees("two_stage", 2 * work(Math.sqrt(ratio), r.input("n")));
});

row("TD-08", (r) => {
  const fuelFlow = r.input("fuel_flow");
  const engine = {
    displacement: r.input("cylinders") * r.input("displacement_per_cylinder"),
    angularSpeed: r.input("speed"),
    revolutionsPerCycle: 2,
  };
  const air = {
    airMassFlow: fuelFlow * r.input("air_fuel_ratio"),
    pressure: r.input("intake_pressure"),
    temperature: r.input("intake_temperature"),
  };
  // The book's gas constant is 287.
  r.agrees("volumetric_efficiency", (m.volumetricEfficiency({ ...engine, ...air }) * 287) / 287.05);
  r.agrees("brake_thermal_efficiency", efficiencyOf(r, fuelFlow, r.input("brake_power")));
  r.agrees("torque", m.torqueFromPower({ power: r.input("brake_power"), angularSpeed: r.input("speed") }));
});

row("TD-09", (r) => {
  const engine = engineOf(r);
  const indicated = m.powerFromMeanEffectivePressure({ ...engine, meanEffectivePressure: r.input("imep") });
  const air =
    r.input("volumetric_efficiency") * r.input("air_density") * (engine.displacement * engine.angularSpeed);
  const fuelFlow = air / (4 * Math.PI) / r.input("air_fuel_ratio");
  r.agrees("indicated_thermal_efficiency", efficiencyOf(r, fuelFlow, indicated));
  const brake = indicated * r.input("mechanical_efficiency");
  r.agrees("brake_power", brake);
});

row("TD-10", (r) => {
  const power = r.input("brake_load") * r.input("brake_arm") * r.input("speed");
  r.agrees("brake_power", power);
  r.agrees("bmep", m.brakeMeanEffectivePressure({ ...engineOf(r), power }));
  const fuelFlow = r.input("fuel_flow") * r.input("fuel_specific_gravity") * 1000;
  r.agrees("bsfc", fuelFlow / power);
  r.agrees("brake_thermal_efficiency", efficiencyOf(r, fuelFlow, power));
  // Each cylinder indicates what the brake loses without it.
  const cut = r.inputs("load_with_one_cylinder_cut").map((load) => r.input("brake_load") - load);
  const indicated = cut.reduce((sum, load) => sum + load, 0) * r.input("brake_arm") * r.input("speed");
  r.agrees("indicated_power", indicated);
  r.agrees("mechanical_efficiency", m.mechanicalEfficiency({ brake: power, indicated }));
});

row("TD-11", (r) => {
  const engine = engineOf(r);
  // The brake's constant is in revolutions a minute and gives kilowatts.
  const power = (1000 * r.input("brake_load") * (engine.angularSpeed * 60)) / (2 * Math.PI) / 20_000;
  r.agrees("bmep", m.brakeMeanEffectivePressure({ ...engine, power }));
  const torque = m.torqueFromPower({ power, angularSpeed: engine.angularSpeed });
  r.agrees("torque", torque);
  r.agrees("bmep", m.meanEffectivePressureFromTorque({ ...engine, torque }));
  r.agrees("bsfc", (r.input("fuel_volume") * r.input("fuel_density")) / r.input("fuel_time") / power);
  const [pressure, temperature] = [r.input("pressure"), r.input("temperature")];
  const head = r.input("orifice_head") * r.input("mercury_density");
  r.agrees("volumetric_efficiency", meteredEfficiency(r, { head, pressure, temperature }));
});

row("TD-13", (r) => {
  const pressures = r.inputs("dry_pressure");
  const temperatures = r.inputs("air_temperature");
  ["factor_960_35", "factor_reference", "factor_950_15"].forEach((name, i) => {
    const temperature = temperatures[i]! + 273.15;
    r.agrees(name, m.atmosphericCorrection({ dryPressure: pressures[i]!, temperature }));
  });
});

row("TD-20", (r) => {
  r.inputs("speed").forEach((speed, i) => {
    r.agrees(["fmep_3000", "fmep_6000"][i]!, m.frictionBySpeed(speed));
  });
});

row("TD-21", (r) => {
  r.inputs("altitude").forEach((altitude, i) => {
    const { pressure, temperature } = m.standardAtmosphere(altitude);
    const feet = [1000, 5000, 10_000][i]!;
    r.agrees(`p_${feet}`, pressure);
    r.agrees(`t_${feet}`, (temperature - 273.15) * 1.8 + 32);
  });
});

row("TD-26", (r) => {
  const specificFuelConsumption = r.input("bsfc");
  const airMassFlow = m.airMassFlow({
    power: r.input("power"),
    specificFuelConsumption,
    airFuelRatio: r.input("air_fuel_ratio"),
  });
  r.agrees(
    "volumetric_efficiency",
    m.volumetricEfficiency({
      displacement: r.input("displacement"),
      angularSpeed: r.input("speed"),
      revolutionsPerCycle: 2,
      airMassFlow,
      pressure: r.input("inlet_pressure"),
      temperature: r.input("inlet_temperature") + 273.15,
    }),
  );
});

row("TD-27", (r) => {
  r.agrees("brake_thermal_efficiency", efficiencyOf(r, r.input("fuel_flow"), 250e3));
  const engine = {
    displacement: r.input("displacement"),
    angularSpeed: r.input("speed"),
    revolutionsPerCycle: 2,
  };
  r.agrees(
    "brake_power",
    m.powerFromMeanEffectivePressure({ ...engine, meanEffectivePressure: r.input("bmep") }),
  );
});

row("TD-28", (r) => {
  const engine = engineOf(r);
  const indicated = m.powerFromMeanEffectivePressure({ ...engine, meanEffectivePressure: r.input("imep") });
  r.agrees("fuel_flow", m.fuelFlow({ power: indicated, specificFuelConsumption: r.input("isfc") }));
  const ideal = 1 - r.input("compression_ratio") ** (1 - r.input("gamma"));
  const perHeat = m.thermalEfficiency({ specificFuelConsumption: r.input("isfc"), heatingValue: 1 });
  r.agrees("heating_value", perHeat / (r.input("relative_efficiency") * ideal));
});

row("TD-29", (r) => {
  r.agrees("bmep", m.brakeMeanEffectivePressure({ ...engineOf(r), power: r.input("brake_power") }));
  r.agrees("brake_thermal_efficiency", efficiencyOf(r, r.input("fuel_flow"), r.input("brake_power")));
  // The book's 15 °C are 288 K.
  const [pressure, temperature] = [r.input("pressure"), r.input("temperature") + 273];
  const head = r.input("orifice_head") * 1000;
  const efficiency = meteredEfficiency(r, { head, pressure, temperature });
  r.agrees(exact("volumetric_efficiency_on_ambient_air"), efficiency);
});

row("TD-31", (r) => {
  const brake = r.input("brake_power");
  for (const speed of [1500, 2500]) {
    const indicated = brake + r.input(`friction_power_${speed}`);
    const efficiency = r.input("indicated_thermal_efficiency") * m.mechanicalEfficiency({ brake, indicated });
    r.agrees(`bsfc_${speed}`, 1 / (efficiency * r.input("fuel_heating_value")));
  }
});
