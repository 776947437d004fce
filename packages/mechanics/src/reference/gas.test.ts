import { compareAtLeast, exact, type PublishedRow, row } from "../check/published.test-support.ts";
import * as m from "../index.ts";

compareAtLeast(34);

/** Any mechanism without an offset will do: an ideal cycle knows only volumes. */
const crank = { throwRadius: 0.05, rodLength: 0.2, pinLineOffset: 0 };
const BORE = 0.1;

/** An air-standard Otto cycle: all the heat at top dead centre, none to the walls, both strokes whole. */
function ottoCycle(state: { ratio: number; p1: number; T1: number; gamma: number }): m.ClosedCycle {
  const { ratio, p1, T1, gamma } = state;
  const step = m.DEGREE / 64;
  const sweptVolume = m.boreArea(BORE) * 2 * crank.throwRadius;
  return {
    cylinder: {
      crank,
      bore: BORE,
      clearanceVolume: m.clearanceVolumeForRatio({ sweptVolume, compressionRatio: ratio }),
    },
    inletClosing: 0,
    exhaustOpening: 0,
    charge: { pressure: p1, temperature: T1 },
    burning: { start: -step, duration: 0.99 * step, efficiencyFactor: 40, formFactor: 0 },
    freshRatio: gamma,
    burntRatio: gamma,
    step,
  };
}

function statesOf(cycle: m.ClosedCycle, heat: number) {
  const run = m.runClosedCycle(cycle, heat);
  const top = run.angles.findIndex((angle) => angle > -1e-9);
  const temperature = (node: number) => (run.pressures.at(node)! * run.volumes.at(node)!) / run.massConstant;
  return {
    p3: run.pressures[top]!,
    T3: temperature(top),
    p4: run.pressures.at(-1)!,
    T4: temperature(-1),
    work: run.work,
    efficiency: heat > 0 ? run.work / run.released : Number.NaN,
    meanPressure: run.work / (run.volumes[0]! - cycle.cylinder.clearanceVolume),
    massConstant: run.massConstant,
  };
}

/** The heat that brings the charge from its compressed state to a temperature [J]. */
function heatTo(cycle: m.ClosedCycle, temperature: number): number {
  const { T3, massConstant } = statesOf(cycle, 0);
  return (massConstant * (temperature - T3)) / (cycle.freshRatio - 1);
}

const cycleOf = (r: PublishedRow, kelvin = 0) =>
  ottoCycle({
    ratio: r.input("compression_ratio"),
    p1: r.input("p1"),
    T1: r.input("T1") + kelvin,
    gamma: r.input("gamma"),
  });

/** Heat and work of a kilogram of the row's gas as those of the cylinder's charge. */
function massOf(r: PublishedRow, cycle: m.ClosedCycle): number {
  return statesOf(cycle, 0).massConstant / (r.input("cv") * (r.input("gamma") - 1));
}

row("TD-01", (r) => {
  const sweptVolume = m.sweptVolume({ bore: r.input("bore"), stroke: r.input("stroke") });
  const ratio = m.compressionRatio({ sweptVolume, clearanceVolume: r.input("clearance_volume") });
  const cycle = ottoCycle({ ratio, p1: r.input("p1"), T1: r.input("T1"), gamma: r.input("gamma") });
  const { p3, p4, T4, efficiency, meanPressure } = statesOf(cycle, heatTo(cycle, r.input("T3")));
  r.agrees("p3", p3);
  r.agrees("p4", p4);
  r.agrees("T4", T4 - 273.15);
  r.agrees("efficiency", efficiency);
  r.agrees("mean_effective_pressure", meanPressure);
  // The book's heat capacity and gas constant do not quite make its ratio of heat capacities.
  const heatPerKelvin = (r.input("cv") * (r.input("gamma") - 1)) / r.input("R");
  r.agrees("work_per_cycle", meanPressure * sweptVolume * heatPerKelvin);
  r.agrees("power", meanPressure * sweptVolume * r.input("cycles_per_minute"));
});

row("TD-03", (r) => {
  const cycle = cycleOf(r);
  const mass = massOf(r, cycle);
  const { T3, p3, T4, p4, work, efficiency } = statesOf(cycle, r.input("heat_added") * mass);
  r.agrees("T2", statesOf(cycle, 0).T3);
  r.agrees("p2", statesOf(cycle, 0).p3);
  r.agrees("T3", T3);
  r.agrees("p3", p3);
  r.agrees("T4", T4);
  r.agrees("p4", p4);
  r.agrees("work", work / mass);
  r.agrees("efficiency", efficiency);
});

row("TD-04", (r) => {
  const cycle = cycleOf(r, 273);
  const mass = massOf(r, cycle);
  const { T3, work, efficiency } = statesOf(cycle, r.input("heat_added") * mass);
  r.agrees("T3", T3 - 273);
  r.agrees("efficiency", efficiency);
  r.agrees("work", work / mass);
});

row("TD-05", (r) => {
  const [few, common, many] = r.inputs("compression_ratio");
  const [air, hot] = r.inputs("gamma");
  const efficiency = (ratio: number, gamma: number) =>
    statesOf(ottoCycle({ ratio, gamma, p1: 1e5, T1: 300 }), 800).efficiency;
  r.agrees("eta_r8_g1p4", efficiency(few!, air!));
  r.agrees("eta_r10_g1p4", efficiency(common!, air!));
  r.agrees("eta_r12_g1p4", efficiency(many!, air!));
  r.agrees("eta_r10_g1p3", efficiency(common!, hot!));
});

for (const id of ["CR-03", "CR-04"]) {
  row(id, (r) => {
    const sizes = { bore: r.input("bore"), stroke: id === "CR-03" ? r.input("stroke") : 1 };
    // The books go on with a whole ratio.
    const ratio =
      id === "CR-03"
        ? Math.round(
            m.compressionRatio({
              sweptVolume: m.sweptVolume(sizes),
              clearanceVolume: r.input("clearance_volume"),
            }),
          )
        : r.input("compression_ratio");
    const { efficiency } = statesOf(ottoCycle({ ratio, gamma: 1.4, p1: 1e5, T1: 300 }), 800);
    r.agrees("air_standard_efficiency", efficiency);
  });
}

row("TD-19", (r) => {
  const burning = { start: 0, duration: 1, efficiencyFactor: r.input("a"), formFactor: r.input("m") };
  r.inputs("fraction_of_burn_duration").forEach((fraction, i) => {
    r.agrees(["xb_0p25", "xb_0p50", "xb_0p75", "xb_1p00"][i]!, m.burntShare(burning, fraction));
  });
});

row("TD-22", (r) => {
  const cycle = cycleOf(r);
  const { p3, T4, p4, efficiency } = statesOf(cycle, heatTo(cycle, r.input("T3")));
  r.agrees("p3", p3);
  r.agrees("T4", T4);
  r.agrees("p4", p4);
  r.agrees(exact("otto_efficiency"), efficiency);
});

row("TD-23", (r) => {
  const gamma = 1 + r.input("R") / r.input("cv");
  const ratio = (r.input("p2") / r.input("p1")) ** (1 / gamma);
  r.agrees("compression_ratio", ratio);
  const cycle = ottoCycle({ ratio, gamma, p1: r.input("p1"), T1: r.input("T1") + 273.15 });
  const { efficiency, meanPressure } = statesOf(cycle, m.heatForPeakPressure(cycle, r.input("p3")));
  r.agrees("efficiency", efficiency);
  r.agrees("mean_effective_pressure", meanPressure);
});
