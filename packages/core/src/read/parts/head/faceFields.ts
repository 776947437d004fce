import { dimension } from "../../fields.ts";

/** The head face: how true and smooth it is, and where the chamber stands in it. */
export const faceFields = {
  chamberWidth: dimension({
    label: "Widest reach of the chamber",
    symbol: "w_ch",
    unit: "mm",
    range: ["10 mm", "260 mm"],
    tolerance: "0.3",
    help: "Diameter of the smallest circle, about the middle that the chamber is made for, that holds the whole of the chamber’s edge in the head face.",
  }),
  chamberShift: dimension({
    label: "Chamber beside the cylinder",
    symbol: "e_ch",
    unit: "mm",
    range: ["0 mm", "5 mm"],
    tolerance: "0.1",
    help: "How far the middle of that circle can stand from the cylinder’s axis, play of the dowels included; the worst cylinder.",
  }),
  faceRoughness: dimension({
    label: "Head face roughness Ra",
    symbol: "Ra_h",
    unit: "um",
    range: ["0.05 um", "10 um"],
    tolerance: "10 %",
    help: "Arithmetic mean roughness of the finished head face.",
  }),
  faceFlatness: dimension({
    label: "Head face out of flat",
    symbol: "f_h",
    unit: "mm",
    measureBy: "trial-assembly",
    range: ["0 mm", "1 mm"],
    tolerance: "0.01",
    help: "Widest gap under a straight edge laid along, across and over the corners of the finished head face.",
  }),
};
