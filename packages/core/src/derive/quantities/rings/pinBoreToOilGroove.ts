import { pinBoreToOilGroove as wallOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinBoreToOilGroove = quantity({
  id: "pinBoreToOilGroove",
  name: "Pin bore to oil ring groove",
  symbol: "g_po",
  unit: "mm",
  decimals: 2,
  system: "rings",
  meaning:
    "Metal between the upper edge of the pin bore and the oil ring’s groove; negative when the pin bore cuts the groove, and the ring needs a support rail.",
  inputs: { h_c: "piston.compressionHeight", h_rp: "ringPackDepth", d_b: "piston.pinBore" },
  formula: "h_c - h_rp - d_b / 2",
  compute: ({ h_c, h_rp, d_b }) => wallOf({ compressionHeight: h_c, ringPackDepth: h_rp, pinDiameter: d_b }),
  shape: "monotone",
  valid: "round pin bore; its chamfers and relief grooves are left out",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { h_c: "28.4 mm", h_rp: "19.09 mm", d_b: "22 mm" }, expect: "-1.69 mm" }],
});
