import { fastenerFields } from "../fastener/fastenerFields.ts";
import { jointFields } from "../fastener/jointFields.ts";
import { count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The bolts of one connecting rod. */
export const rodBolt = part(
  {
    key: "rodBolt",
    id: "rod-bolt",
    label: "Rod bolts",
    help: "The bolts that hold the cap of one connecting rod.",
  },
  {
    count: count({ label: "Bolts in one rod", symbol: "n_b", help: "Counted.", least: 2, most: 4 }),
    timesTightened: count({
      label: "Times tightened",
      symbol: "n_t",
      help: "How often the bolts have been brought to their full preload, sizing of the big end and trial assemblies included, the final one too.",
      least: 1,
      most: 60,
    }),
    ...fastenerFields({ key: "rodBolt", where: "rod", into: "rod" }),
    shankLength: dimension({
      label: "Stretched shank length",
      symbol: "l_sh",
      unit: "mm",
      range: ["5 mm", "150 mm"],
      tolerance: "0.5",
      help: "Length of the shank that is under tension.",
    }),
    threadLength: dimension({
      label: "Stretched thread length",
      symbol: "l_th",
      unit: "mm",
      range: ["0 mm", "60 mm"],
      tolerance: "0.5",
      help: "Free thread between the shank and the first engaged thread.",
    }),
    preload: dimension({
      label: "Preload of one bolt",
      symbol: "F_v",
      unit: "kN",
      range: ["2 kN", "300 kN"],
      tolerance: "5 %",
      help: "Clamp force of one bolt at its final stretch or torque, as its maker states it.",
    }),
    ...jointFields("cap and rod at the bolt"),
    stretch: dimension({
      label: "Stretch",
      symbol: "f_b",
      unit: "mm",
      per: "cylinder",
      range: ["0 mm", "1 mm"],
      tolerance: "0.005",
      help: "How much longer the tightened bolt is than its free length, by stretch gauge. Enter the bolt that lies furthest from the middle of the window.",
    }),
    newFreeLength: dimension({
      label: "Free length when new",
      symbol: "l_0",
      unit: "mm",
      range: ["10 mm", "250 mm"],
      tolerance: "0.002",
      help: "Length of the bolt over its ends before it was first tightened, by stretch gauge or micrometer.",
    }),
    freeLength: dimension({
      label: "Free length now",
      symbol: "l_1b",
      unit: "mm",
      range: ["10 mm", "250 mm"],
      tolerance: "0.002",
      help: "Length of the same bolt, loose and cold, measured the same way after its last loosening. Enter the bolt that has grown most.",
    }),
    leastStretch: dimension({
      label: "Least stretch",
      symbol: "f_min",
      unit: "mm",
      range: ["0 mm", "1 mm"],
      exact: "a limit that its maker or the builder sets, not a size that is measured",
      help: "Lower end of the stretch window on the maker's sheet.",
    }),
    mostStretch: dimension({
      label: "Greatest stretch",
      symbol: "f_max",
      unit: "mm",
      range: ["0 mm", "1 mm"],
      exact: "a limit that its maker or the builder sets, not a size that is measured",
      help: "Upper end of the stretch window on the maker's sheet.",
    }),
  },
);
