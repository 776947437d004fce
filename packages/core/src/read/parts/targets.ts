import { dimension } from "../fields.ts";
import { part } from "../part.ts";
import { requireAscendingSpeeds } from "../requireAscendingSpeeds.ts";
import { table } from "../tableField.ts";

/** What the engine is meant to do. */
export const targets = part(
  { key: "targets", id: "targets", label: "Targets", help: "What the engine is meant to do.", bought: false },
  {
    power: dimension(
      {
        label: "Target power",
        symbol: "P",
        unit: "kW",
        range: ["1 kW", "5000 kW"],
        exact: "an aim that is set, not a size that is measured",
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
        exact: "an aim that is set, not a size that is measured",
        help: "Crankshaft speed at which the target power is meant.",
      },
      "target",
    ),
    torque: dimension(
      {
        label: "Target torque",
        symbol: "T_t",
        unit: "N m",
        range: ["1 N m", "20000 N m"],
        exact: "an aim that is set, not a size that is measured",
        help: "Greatest torque wanted, at the crankshaft.",
      },
      "target",
    ),
    speed: dimension(
      {
        label: "Highest speed",
        symbol: "n",
        unit: "rpm",
        range: ["500 rpm", "25000 rpm"],
        exact: "an aim that is set, not a size that is measured",
        help: "Highest crankshaft speed intended: where the limiter is set.",
      },
      "target",
    ),
    lowestSpeed: dimension(
      {
        label: "Lowest speed",
        symbol: "n_l",
        unit: "rpm",
        range: ["200 rpm", "20000 rpm"],
        exact: "an aim that is set, not a size that is measured",
        help: "Lowest crankshaft speed at which the engine works under load for more than a moment.",
        assumed: {
          value: "1500 rpm ± 300",
          because: "engines are loaded from about 1200 to 1800 rpm on (common practice)",
        },
      },
      "target",
    ),
    overspeed: dimension(
      {
        label: "Overspeed",
        symbol: "n_o",
        unit: "rpm",
        range: ["500 rpm", "28000 rpm"],
        exact: "an aim that is set, not a size that is measured",
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
        exact: "an aim that is set, not a size that is measured",
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
        exact: "a share that is claimed, and judged as it is claimed",
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
        exact: "an aim that is set, not a size that is measured",
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
            exact: "an aim that is set, not a size that is measured",
            help: "Crankshaft speed.",
          }),
          torque: dimension({
            label: "Torque",
            symbol: "T",
            unit: "N m",
            range: ["0 N m", "20000 N m"],
            exact: "an aim that is set, not a size that is measured",
            help: "Torque at the crankshaft at this speed, full throttle.",
          }),
        },
        help: "Torque at the crankshaft against speed, full throttle: as wanted, or as measured on a dynamometer; speeds ascending, torque taken straight between two rows. A figure from a chassis dynamometer is for the wheels: add what the driveline takes before it is entered.",
        check: requireAscendingSpeeds,
      },
      "target",
    ),
  },
);
