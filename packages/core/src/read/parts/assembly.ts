import { dimension } from "../fields.ts";
import { part } from "../part.ts";

const temperature = (label: string, symbol: string, help: string) =>
  dimension({ label, symbol, unit: "degC", range: ["-10 degC", "60 degC"], tolerance: "0.5", help });

/** What is read off while the engine is measured and put together. */
export const assembly = part(
  {
    key: "assembly",
    id: "assembly",
    label: "Assembly",
    help: "What is read off while the engine is measured and put together.",
    bought: false,
  },
  {
    partTemperature: temperature(
      "Temperature of the part",
      "T_pt",
      "Temperature of pistons, crankshaft or block when their sizes were taken, by a contact thermometer. Of several, the one farthest from the gauge.",
    ),
    gaugeTemperature: temperature(
      "Temperature of the gauge",
      "T_ga",
      "Temperature of the micrometer, or of the ring or setting piece by which the gauge was set, when the sizes were taken.",
    ),
    mainTorqueRise: dimension({
      label: "Rise of turning torque by a main cap",
      symbol: "Delta_T_mc",
      unit: "N m",
      per: "main",
      range: ["-20 N m", "200 N m"],
      tolerance: "0.1",
      help: "Torque that keeps the crankshaft turning slowly after this main cap was tightened, less that before, by a beam or dial wrench, without rods and rear seal.",
    }),
    pistonTorqueRise: dimension({
      label: "Rise of turning torque by a piston",
      symbol: "Delta_T_pi",
      unit: "N m",
      per: "cylinder",
      range: ["-20 N m", "200 N m"],
      tolerance: "0.3",
      help: "Torque that keeps the crankshaft turning slowly after this piston and rod were fitted, less that before, by a beam or dial wrench, heads off.",
    }),
  },
);
