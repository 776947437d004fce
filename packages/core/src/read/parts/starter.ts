import { dimension } from "../fields.ts";
import { part } from "../part.ts";

/** What turns the engine over to start it. */
export const starter = part(
  { key: "starter", id: "starter", label: "Starter", help: "What turns the engine over to start it." },
  {
    torque: dimension({
      label: "Starter torque at the crankshaft",
      symbol: "T_st",
      unit: "N m",
      range: ["1 N m", "20000 N m"],
      tolerance: "10 %",
      help: "Torque of the starter held fast, times the ratio of ring gear to pinion, at the battery voltage under that load.",
    }),
  },
);
