import { choice, dimension } from "../../fields.ts";

/** Fillets, surfaces, oil holes and the thrust bearing’s place. */
export const surfaceFields = {
  filletRadius: dimension({
    label: "Fillet radius",
    symbol: "r_f",
    unit: "mm",
    range: ["0.3 mm", "12 mm"],
    tolerance: "0.2",
    help: "Radius of the fillets from journals and crankpins to the cheeks; the larger.",
  }),
  leastFilletRadius: dimension({
    label: "Least fillet radius",
    symbol: "r_fl",
    unit: "mm",
    range: ["0.3 mm", "12 mm"],
    tolerance: "0.1",
    help: "Smallest radius of any fillet from a journal or crankpin to its cheek, by radius gauge after the last grind.",
  }),
  filletForm: choice({
    label: "Form of the fillets",
    help: "How the fillets of the crankshaft are made.",
    options: {
      ground: "ground to a full radius",
      rolled: "undercut and rolled under pressure",
    },
    assumed: {
      value: "ground",
      because: "fillets are taken as ground when nothing else is said, which asks for the larger radius",
    },
  }),
  journalRoughness: dimension({
    label: "Journal roughness Rq",
    symbol: "Rq_j",
    unit: "um",
    range: ["0.01 um", "3 um"],
    tolerance: "20 %",
    help: "Root mean square roughness of the journals.",
    assumed: {
      value: "0.15 um ± 0.08",
      because: "polished journals have about 0.08 to 0.22 µm (from memory)",
    },
  }),
  journalRa: dimension({
    label: "Journal roughness Ra",
    symbol: "Ra_j",
    unit: "um",
    range: ["0.01 um", "3 um"],
    tolerance: "10 %",
    help: "Arithmetic mean roughness of journals and crankpins, along the crankshaft, as shops state it; the roughest.",
  }),
  journalHardness: dimension({
    label: "Journal hardness",
    symbol: "HV_j",
    unit: "HV",
    range: ["100 HV", "1500 HV"],
    tolerance: "5 %",
    help: "Vickers hardness of the running surface of journals and crankpins; 20 HRC is about 240 HV, 28 HRC about 285, 50 HRC about 515 (from memory).",
  }),
  oilHoleLeastRadius: dimension({
    label: "Nearest the oil drilling comes to the axis",
    symbol: "r_0",
    unit: "mm",
    range: ["0 mm", "60 mm"],
    tolerance: "1",
    help: "Least distance from the crankshaft’s axis to the drilling that leads oil from a main journal to a crankpin; 0 for one that goes through the middle.",
    assumed: {
      value: "0 mm ± 0",
      because: "a main journal drilled through its middle asks for the most pressure",
    },
  }),
  thrustLength: dimension({
    label: "Thrust journal length",
    symbol: "L_th",
    unit: "mm",
    range: ["8 mm", "150 mm"],
    tolerance: "0.03",
    help: "Between the faces that run on the thrust washers.",
  }),
  thrustToEnd: dimension({
    label: "Thrust bearing to end cylinder",
    symbol: "z_e",
    unit: "mm",
    range: ["0 mm", "2000 mm"],
    tolerance: "1",
    help: "Distance along the crankshaft from the thrust bearing to the farthest cylinder.",
  }),
};
