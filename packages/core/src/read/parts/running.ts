import type { DimensionSpec } from "../FieldSpec.ts";
import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

type Bare = Pick<DimensionSpec, "tolerance" | "exact">;

const limit: Bare = { exact: "a limit that is set, not read off the engine" };

const speed = (label: string, symbol: string, bare: Bare, help: string) =>
  dimension({ label, symbol, unit: "rpm", range: ["300 rpm", "28000 rpm"], ...bare, help });
const hours = (label: string, symbol: string, bare: Bare, help: string) =>
  dimension({ label, symbol, unit: "h", range: ["0 h", "20000 h"], ...bare, help });
const runs = (label: string, symbol: string, least: number, help: string) =>
  count({ label, symbol, least, most: 100_000, help });

/** What is planned for the first hours, and what the log says of an engine that has run. */
export const running = part(
  {
    key: "running",
    id: "running",
    label: "Running",
    help: "What is planned for the first hours, and what the log says once the engine has run.",
    bought: false,
  },
  {
    log: choice({
      label: "Running log",
      help: "Whether the engine has run and its log is entered: what is read off a running engine is asked for only then.",
      options: { entered: "it has run, and its log is entered", none: "it has not run yet" },
      assumed: {
        value: "none",
        because: "nothing is entered that a running engine tells",
        unless: ["running.highestSpeed", "running.leakDown", "running.hours", "running.overheated"],
      },
    }),
    beddingSpeed: speed(
      "Highest speed while bedding in",
      "n_b",
      limit,
      "Highest crankshaft speed allowed while rings and followers bed in.",
    ),
    alarmOilPressure: dimension({
      label: "Oil pressure alarm at speed",
      symbol: "p_al",
      unit: "bar",
      range: ["0.05 bar", "12 bar"],
      tolerance: "0.1",
      help: "Hot oil pressure below which the alarm acts or the engine is stopped, as set for the highest speed; above that of the crankcase.",
    }),
    highestSpeed: speed(
      "Highest speed logged",
      "n_lg",
      { tolerance: "0.5 %" },
      "Highest crankshaft speed in the log or on the tell-tale since the strength checks or the last inspection.",
    ),
    leakDown: dimension({
      label: "Leak-down",
      symbol: "q_l",
      unit: "%",
      per: "cylinder",
      range: ["0 %", "100 %"],
      tolerance: "2",
      help: "Share of the test pressure that a leak-down tester shows as lost, engine warm, piston at top dead centre with both valves shut.",
    }),
    overheated: choice({
      label: "Overheated",
      help: "Whether the engine has run far above its coolant or oil temperature, or without coolant, since its last inspection.",
      options: { yes: "it has", no: "it has not" },
      assumed: { value: "no", because: "no overheating is entered" },
    }),
    hours: hours(
      "Hours run",
      "t_u",
      { tolerance: "1 %" },
      "Hours run since new parts were fitted, those of the part with the shortest life.",
    ),
    allowedHours: hours(
      "Hours allowed",
      "t_al",
      limit,
      "Hours after which the part with the shortest life is to be replaced, by its maker: often valve springs, rod bolts or piston pins.",
    ),
    rodRuns: runs(
      "Runs of the rods",
      "N_u",
      0,
      "Runs or passes under load since the rods were new, counted.",
    ),
    allowedRodRuns: runs(
      "Runs allowed for the rods",
      "N_al",
      1,
      "Runs or passes after which the rods’ maker wants them replaced in such use.",
    ),
  },
);
