import { dimension } from "../fields.ts";
import { part } from "../part.ts";
import { requireAscendingSpeeds } from "../requireAscendingSpeeds.ts";
import { table } from "../tableField.ts";

/** What the engine is meant to do. */
export const targets = part(
  { key: "targets", id: "targets", label: "Targets", help: "What the engine is meant to do." },
  {
    power: dimension(
      {
        label: "Target power",
        symbol: "P",
        unit: "kW",
        range: ["1 kW", "5000 kW"],
        places: ["at crank", "at wheels"],
        help: "Greatest power, and where it is meant: a figure at the wheels leaves out what the driveline takes.",
      },
      "target",
    ),
    powerSpeed: dimension(
      {
        label: "Speed at target power",
        symbol: "n_P",
        unit: "rpm",
        range: ["500 rpm", "25000 rpm"],
        help: "Crankshaft speed at which the target power is meant.",
      },
      "target",
    ),
    speed: dimension(
      {
        label: "Highest speed",
        symbol: "n",
        unit: "rpm",
        range: ["500 rpm", "25000 rpm"],
        help: "Highest crankshaft speed intended: where the limiter is set.",
      },
      "target",
    ),
    overspeed: dimension(
      {
        label: "Overspeed",
        symbol: "n_o",
        unit: "rpm",
        range: ["500 rpm", "28000 rpm"],
        help: "Speed that a missed shift or a late limiter can reach; tension loads are taken there.",
      },
      "target",
    ),
    compressionRatio: dimension(
      {
        label: "Target compression ratio",
        symbol: "epsilon_t",
        unit: "1",
        range: ["4", "20"],
        help: "Static compression ratio wanted.",
      },
      "target",
    ),
    drivelineLoss: dimension(
      {
        label: "Driveline loss",
        symbol: "k_d",
        unit: "%",
        range: ["0 %", "40 %"],
        help: "Share of the crank power that does not reach the wheels.",
        assumed: { value: "15 % ± 5", because: "driveline losses of 10 to 20 % are usual (common practice)" },
      },
      "target",
    ),
    rodClearance: dimension(
      {
        label: "Wanted rod clearance",
        symbol: "c_w",
        unit: "mm",
        range: ["0 mm", "10 mm"],
        help: "Clearance wanted between rod and cylinder bottom once a notch is cut; the notch sizes are computed for it.",
        assumed: {
          value: "1.5 mm ± 0",
          because: "1.5 mm is the usual aim with steel rods (common practice)",
        },
      },
      "target",
    ),
    peakCylinderPressure: dimension(
      {
        label: "Peak cylinder pressure",
        symbol: "p_max",
        unit: "bar",
        range: ["15 bar", "350 bar"],
        tolerance: "15 %",
        help: "Highest gas pressure for the strength checks: measured in the cylinder, or estimated as 6 to 8 times the brake mean effective pressure without boost, 4.3 to 6 times with it (from memory).",
      },
      "assumed",
    ),
    torqueCurve: table(
      {
        label: "Torque curve",
        least: 3,
        most: 200,
        row: "{ speed: 4500 rpm, torque: 560 N m }",
        columns: {
          speed: dimension({
            label: "Speed",
            symbol: "n",
            unit: "rpm",
            range: ["300 rpm", "25000 rpm"],
            help: "Crankshaft speed.",
          }),
          torque: dimension({
            label: "Torque",
            symbol: "T",
            unit: "N m",
            range: ["0 N m", "20000 N m"],
            help: "Torque at the crankshaft at this speed, full throttle.",
          }),
        },
        help: "Torque at the crankshaft against speed, full throttle: as wanted, or as measured on a dynamometer; speeds ascending, torque taken straight between two rows. A figure from a chassis dynamometer is for the wheels: add what the driveline takes before it is entered.",
        check: requireAscendingSpeeds,
      },
      "target",
      "assumed",
    ),
    blockTemperature: dimension(
      {
        label: "Block temperature",
        symbol: "T_b",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of crankcase and cylinder block at full load.",
        assumed: {
          value: "95 degC ± 10",
          because: "liquid-cooled crankcases run at about 85 to 105 °C at full load (from memory)",
        },
      },
      "assumed",
    ),
    headTemperature: dimension(
      {
        label: "Head temperature",
        symbol: "T_h",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of the cylinder head at full load.",
        assumed: {
          value: "110 degC ± 20",
          because: "liquid-cooled heads run at about 90 to 130 °C on average (from memory)",
        },
      },
      "assumed",
    ),
    crankshaftTemperature: dimension(
      {
        label: "Crankshaft temperature",
        symbol: "T_c",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of the crankshaft at full load.",
        assumed: {
          value: "110 degC ± 15",
          because: "journals run a little above the oil, at about 95 to 125 °C (from memory)",
        },
      },
      "assumed",
    ),
    rodTemperature: dimension(
      {
        label: "Rod temperature",
        symbol: "T_rod",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of the connecting rod at full load.",
        assumed: {
          value: "120 degC ± 20",
          because: "rods run at about 100 to 140 °C on average (from memory)",
        },
      },
      "assumed",
    ),
    pistonTemperature: dimension(
      {
        label: "Piston temperature",
        symbol: "T_p",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of the piston between pin and crown at full load.",
        assumed: {
          value: "150 degC ± 30",
          because: "the piston between crown and pin runs at about 120 to 180 °C on average (from memory)",
        },
      },
      "assumed",
    ),
    skirtTemperature: dimension(
      {
        label: "Piston skirt temperature",
        symbol: "T_s",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Temperature of the piston skirt at the gauge point at full load.",
        assumed: {
          value: "120 degC ± 20",
          because: "skirts run at about 100 to 140 °C at full load (from memory)",
        },
      },
      "assumed",
    ),
    crownTemperature: dimension(
      {
        label: "Piston crown temperature",
        symbol: "T_cr",
        unit: "degC",
        range: ["60 degC", "450 degC"],
        tolerance: "25",
        help: "Temperature of the crown where it is bent most, at its support, at full load.",
        assumed: {
          value: "230 degC ± 30",
          because:
            "crowns run at about 200 to 260 °C at their support and hotter in the middle (from memory)",
        },
      },
      "assumed",
    ),
    pinTemperature: dimension(
      {
        label: "Piston pin temperature",
        symbol: "T_pin",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Temperature of the piston pin and its bosses at full load.",
        assumed: {
          value: "150 degC ± 25",
          because: "pins run at about 125 to 175 °C at full load (from memory)",
        },
      },
      "assumed",
    ),
    pushrodTemperature: dimension(
      {
        label: "Pushrod temperature",
        symbol: "T_pr",
        unit: "degC",
        range: ["-40 degC", "600 degC"],
        tolerance: "20",
        help: "Mean temperature of the pushrods at full load.",
        assumed: {
          value: "95 degC ± 15",
          because: "pushrods run at about the temperature of the oil (from memory)",
        },
      },
      "assumed",
    ),
    ambientPressure: dimension(
      {
        label: "Ambient pressure",
        symbol: "p_a",
        unit: "bar",
        range: ["0.5 bar", "1.1 bar"],
        tolerance: "0.02",
        help: "Air pressure where the engine is used; about 0.011 bar less for every 100 m of height.",
        assumed: { value: "1.0 bar ± 0.03", because: "up to about 300 m above the sea (common practice)" },
      },
      "assumed",
    ),
    mistDensity: dimension(
      {
        label: "Density of the oil mist",
        symbol: "rho_m",
        unit: "kg/m3",
        range: ["1 kg/m3", "100 kg/m3"],
        help: "Density of air and oil about the crankshaft.",
        assumed: {
          value: "15 kg/m3 ± 10",
          because: "5 to 30 kg/m3 have been supposed; it is not known better (from memory)",
        },
      },
      "assumed",
    ),
    secondRingTemperature: dimension(
      {
        label: "Second ring temperature",
        symbol: "T_r2",
        unit: "degC",
        range: ["50 degC", "400 degC"],
        tolerance: "30",
        help: "Temperature of the second ring at full load.",
        assumed: { value: "180 degC ± 30", because: "second rings run at about 150 to 210 °C (from memory)" },
      },
      "assumed",
    ),
    topLandTemperature: dimension(
      {
        label: "Top land temperature",
        symbol: "T_tl",
        unit: "degC",
        range: ["50 degC", "450 degC"],
        tolerance: "30",
        help: "Temperature of the piston at its top land at full load.",
        assumed: { value: "260 degC ± 40", because: "top lands run at about 220 to 300 °C (from memory)" },
      },
      "assumed",
    ),
    ambientTemperature: dimension(
      {
        label: "Ambient temperature",
        symbol: "T_a",
        unit: "degC",
        range: ["-40 degC", "60 degC"],
        tolerance: "5",
        help: "Temperature of the air that the engine draws in, at its filter.",
        assumed: { value: "25 degC ± 10", because: "mild weather (common practice)" },
      },
      "assumed",
    ),
    relativeHumidity: dimension(
      {
        label: "Relative humidity",
        symbol: "phi_a",
        unit: "%",
        range: ["0 %", "100 %"],
        tolerance: "10",
        help: "Water vapour in the ambient air, as a share of what it can hold.",
        assumed: { value: "50 % ± 30", because: "neither desert nor rain (common practice)" },
      },
      "assumed",
    ),
    shellTemperature: dimension(
      {
        label: "Bearing shell temperature",
        symbol: "T_sh",
        unit: "degC",
        range: ["-40 degC", "250 degC"],
        tolerance: "15",
        help: "Mean temperature of main and rod bearing shells at full load.",
        assumed: {
          value: "115 degC ± 15",
          because: "shells run between their housing and the oil in the film (from memory)",
        },
      },
      "assumed",
    ),
    linerTemperature: dimension(
      {
        label: "Liner temperature",
        symbol: "T_li",
        unit: "degC",
        range: ["-40 degC", "400 degC"],
        tolerance: "15",
        help: "Mean temperature of a dry liner at full load.",
        assumed: {
          value: "110 degC ± 15",
          because: "dry liners run about 10 to 25 K above the block around them (from memory)",
        },
      },
      "assumed",
    ),
    headFastenerTemperature: dimension(
      {
        label: "Head fastener temperature",
        symbol: "T_hs",
        unit: "degC",
        range: ["-40 degC", "300 degC"],
        tolerance: "20",
        help: "Mean temperature of the head studs or bolts at full load.",
        assumed: { value: "90 degC ± 15", because: "head studs run a little below the block (from memory)" },
      },
      "assumed",
    ),
  },
);
