import { quantity } from "../../Quantity.ts";

export const rollerBigEndClearance = quantity({
  id: "rollerBigEndClearance",
  name: "Radial play of a roller big end",
  symbol: "C_rol",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "Play across the diameter of a big end that runs on rollers, at 20 °C: eye less crankpin less two rollers. Negative: the rollers are squeezed.",
  inputs: {
    D_Hr: "connectingRod.bigEndBore",
    D_p: "crankshaft.crankpinDiameter",
    d_rol: "rodBearing.rollerDiameter",
  },
  formula: "D_Hr - D_p - 2 * d_rol",
  compute: ({ D_Hr, D_p, d_rol }) => D_Hr - D_p - 2 * d_rol,
  shape: "monotone",
  hot: { quantity: "rollerBigEndClearanceHot" },
  valid: "the big end’s bore, or its race, as assembled on its rod; all at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { D_Hr: "44.02 mm", D_p: "36 mm", d_rol: "4 mm" }, expect: "0.020 mm" }],
  display: true,
});
