import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(14);

for (const id of ["TD-01", "TD-03", "TD-22"]) {
  row(id, (r) => {
    const compression = { trappedCompressionRatio: 6, polytropicExponent: r.input("gamma") };
    if (id === "TD-01") {
      compression.trappedCompressionRatio = m.compressionRatio({
        sweptVolume: m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") }),
        clearanceVolume: r.input("clearance_volume"),
      });
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
});

row("TD-08", (r) => {
  r.agrees("torque", m.torqueFromPower({ power: r.input("brake_power"), angularSpeed: r.input("speed") }));
});

row("TD-10", (r) => {
  const power = r.input("brake_load") * r.input("brake_arm") * r.input("speed");
  r.agrees("brake_power", power);
  const displacement = m.engineDisplacement({
    bore: r.input("bore"),
    stroke: r.input("stroke"),
    cylinders: r.input("cylinders"),
  });
  const engine = { displacement, angularSpeed: r.input("speed"), revolutionsPerCycle: 2 };
  r.agrees("bmep", m.brakeMeanEffectivePressure({ ...engine, power }));
});

row("TD-13", (r) => {
  const pressures = r.inputs("dry_pressure");
  const temperatures = r.inputs("air_temperature");
  ["factor_960_35", "factor_reference", "factor_950_15"].forEach((name, i) => {
    const temperature = temperatures[i]! + 273.15;
    r.agrees(name, m.atmosphericCorrection({ dryPressure: pressures[i]!, temperature }));
  });
});

row("TD-27", (r) => {
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

row("TD-29", (r) => {
  const displacement = m.engineDisplacement({
    bore: r.input("bore"),
    stroke: r.input("stroke"),
    cylinders: r.input("cylinders"),
  });
  const engine = { displacement, angularSpeed: r.input("speed"), revolutionsPerCycle: 2 };
  r.agrees("bmep", m.brakeMeanEffectivePressure({ ...engine, power: r.input("brake_power") }));
});
