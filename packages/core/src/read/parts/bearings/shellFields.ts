import type { PositionKind } from "../../FieldSpec.ts";
import { choice, dimension } from "../../fields.ts";
import { clearanceFields } from "./clearanceFields.ts";

const linings = {
  "white-metal": "tin-based white metal",
  "aluminium-tin": "aluminium-tin or aluminium-silicon",
  "copper-lead": "copper-lead or lead bronze with overlay",
  sputtered: "sputtered or other vapour-deposited overlay",
};

/** Fields of the shells of main or rod bearings: size, lining, crush, edge chamfer, surface. */
export function shellFields(where: "main" | "rod", loaded: string, per: PositionKind) {
  return {
    kind: choice({
      label: "Kind of bearing",
      help: "Plain shells, or rollers or balls as in built-up crankshafts of singles and twins.",
      options: { plain: "plain shells in an oil film", rolling: "rollers or balls" },
      assumed: { value: "plain", because: "nearly every engine runs in plain shells (common practice)" },
    }),
    wall: dimension({
      label: "Shell wall",
      symbol: "t_s",
      unit: "mm",
      per,
      measureBy: "trial-assembly",
      range: ["0.5 mm", "10 mm"],
      tolerance: "0.004",
      help: `Wall of one ${where} bearing shell at its crown, square to the joint.`,
    }),
    length: dimension({
      label: "Effective shell length",
      symbol: "L",
      unit: "mm",
      range: ["4 mm", "150 mm"],
      tolerance: "0.1",
      help: `Length along the crankshaft of the shell that takes the gas load (${loaded}), its chamfers and its own grooves taken off.`,
    }),
    lining: choice({ label: "Lining", help: "Class of the running layer.", options: linings }),
    crush: dimension({
      label: "Crush",
      symbol: "a_c",
      unit: "mm",
      per,
      range: ["0 mm", "0.3 mm"],
      tolerance: "0.01",
      help: `How far one end of a ${where} bearing shell stands proud of the housing’s joint when the other is held flush: the excess length that presses it in.`,
    }),
    chamferDepth: dimension({
      label: "Edge chamfer",
      symbol: "q_c",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.1",
      help: "Depth, square to the shaft, of the chamfer on the shell’s edge next to the fillet.",
    }),
    chamferWidth: dimension({
      label: "Edge chamfer width",
      symbol: "w_q",
      unit: "mm",
      range: ["0 mm", "6 mm"],
      tolerance: "0.1",
      help: "Width, along the shaft, of the chamfer on the shell’s edge next to the fillet.",
    }),
    edgeToCheek: dimension({
      label: "Shell edge to cheek",
      symbol: "a_e",
      unit: "mm",
      range: ["0 mm", "20 mm"],
      tolerance: "0.2",
      help: "Least axial distance from the shell’s edge to the cheek from which the fillet rises, with the play taken to that side.",
    }),
    ...clearanceFields(where, per),
    roughness: dimension({
      label: "Shell roughness Rq",
      symbol: "Rq_s",
      unit: "um",
      range: ["0.02 um", "5 um"],
      tolerance: "20 %",
      help: "Root mean square roughness of the running face.",
      assumed: {
        value: "0.4 um ± 0.2",
        because: "bored or plated shells have about 0.2 to 0.6 µm (from memory)",
      },
    }),
  };
}
