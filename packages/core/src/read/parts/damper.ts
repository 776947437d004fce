import { dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The torsional damper or pulley hub on the front of the crankshaft. */
export const damper = part(
  {
    key: "damper",
    id: "damper",
    label: "Damper",
    help: "The torsional damper, or the plain hub, pressed on the front of the crankshaft.",
  },
  {
    hubInertia: dimension({
      label: "Hub inertia",
      symbol: "J_h",
      unit: "kg m2",
      range: ["0.00001 kg m2", "2 kg m2"],
      tolerance: "5 %",
      help: "Moment of inertia of what turns stiffly with the crankshaft’s front end: hub and pulleys.",
    }),
    ringInertia: dimension({
      label: "Ring inertia",
      symbol: "J_r",
      unit: "kg m2",
      range: ["0.00001 kg m2", "2 kg m2"],
      tolerance: "5 %",
      help: "Moment of inertia of the ring that hangs on rubber, fluid or springs.",
    }),
    tunedFrequency: dimension({
      label: "Tuned frequency",
      symbol: "f_d",
      unit: "Hz",
      range: ["20 Hz", "2000 Hz"],
      tolerance: "5 %",
      help: "Natural frequency of the ring on its rubber with the hub held.",
    }),
    snoutDiameter: dimension({
      label: "Snout diameter",
      symbol: "D_sn",
      unit: "mm",
      range: ["10 mm", "120 mm"],
      tolerance: "0.005",
      help: "Diameter of the crankshaft’s front end where the hub sits.",
    }),
    interference: dimension({
      label: "Interference of the hub",
      symbol: "delta_h",
      unit: "mm",
      range: ["0 mm", "0.2 mm"],
      tolerance: "0.006",
      help: "Snout diameter less the bore of the hub, both at 20 °C.",
    }),
    hubOuterDiameter: dimension({
      label: "Hub outer diameter",
      symbol: "D_ho",
      unit: "mm",
      range: ["12 mm", "300 mm"],
      tolerance: "0.5",
      help: "Outer diameter of the hub’s boss over the joint.",
    }),
    hubLength: dimension({
      label: "Hub length",
      symbol: "L_h",
      unit: "mm",
      range: ["5 mm", "200 mm"],
      tolerance: "0.5",
      help: "Length over which hub and snout touch.",
    }),
    fitFriction: dimension({
      label: "Friction of the fit",
      symbol: "mu_f",
      unit: "1",
      range: ["0.03", "0.4"],
      help: "Friction between hub and snout.",
      assumed: {
        value: "0.12 ± 0.04",
        because: "oiled steel press fits hold with 0.08 to 0.16 (from memory)",
      },
    }),
  },
);
