import { dimension } from "../../fields.ts";

/** Shape and surface of the honed bores. */
export const boreFields = {
  boreTaper: dimension({
    label: "Bore taper",
    symbol: "d_Bt",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["0 mm", "1 mm"],
    tolerance: "0.002",
    help: "Largest less smallest diameter of one bore over its height, in the same direction; of the worst cylinder, torque plate fitted.",
  }),
  boreOutOfRound: dimension({
    label: "Bore out of round",
    symbol: "d_Bo",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["0 mm", "1 mm"],
    tolerance: "0.002",
    help: "Largest less smallest diameter of one bore at the same height; of the worst cylinder, torque plate fitted.",
  }),
  borePeakHeight: dimension({
    label: "Reduced peak height Rpk of the bores",
    symbol: "Rpk",
    unit: "um",
    range: ["0.01 um", "5 um"],
    tolerance: "10 %",
    help: "Height of the peaks that stand out of the plateau of the honed bore, by stylus instrument.",
  }),
  honeAngle: dimension({
    label: "Angle of the hone marks",
    symbol: "phi_h",
    unit: "deg",
    range: ["5 deg", "120 deg"],
    tolerance: "2",
    help: "Angle that the two crossing sets of hone marks enclose about a level line round the bore: 0 would be rings, 180° lines along the bore.",
  }),
  leadInChamfer: dimension({
    label: "Lead-in chamfer of the bores",
    symbol: "c_ch",
    unit: "mm",
    range: ["0 mm", "5 mm"],
    tolerance: "0.1",
    help: "Width of the chamfer at the top of the bore, after the deck’s last cut; the least of all cylinders.",
  }),
};
