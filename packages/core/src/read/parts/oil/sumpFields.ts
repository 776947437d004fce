import { choice, dimension } from "../../fields.ts";

/** Where the oil is kept, how much of it, and how it reaches the pump. */
export const sumpFields = {
  sump: choice({
    label: "Sump",
    help: "Where the oil is kept.",
    options: { wet: "in the pan under the crankshaft", dry: "in a tank, the pan pumped empty" },
  }),
  levelBelowCounterweights: dimension({
    label: "Oil level below the counterweights",
    symbol: "h_oc",
    unit: "mm",
    range: ["-100 mm", "300 mm"],
    tolerance: "3",
    help: "From the lowest point of the counterweights’ circle down to the oil at rest, filled to the upper mark; negative when they dip in.",
  }),
  pickupGap: dimension({
    label: "Pickup above the pan floor",
    symbol: "h_pk",
    unit: "mm",
    range: ["0 mm", "60 mm"],
    tolerance: "1",
    help: "From the mouth of the pump’s pickup to the floor of the pan, measured with modelling clay and the pan’s gasket in place.",
  }),
  sumpTemperature: dimension({
    label: "Oil temperature at load",
    symbol: "T_os",
    unit: "degC",
    range: ["20 degC", "200 degC"],
    tolerance: "3",
    help: "Temperature of the oil in the pan or the tank once it is steady at full load.",
  }),
  capacity: dimension({
    label: "Oil capacity",
    symbol: "V_oil",
    unit: "L",
    range: ["0.3 L", "60 L"],
    tolerance: "5 %",
    help: "Oil in the engine at its upper mark.",
  }),
};
