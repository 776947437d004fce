import { quantity } from "../../Quantity.ts";

export const rodBearingClearanceRatio = quantity({
  id: "rodBearingClearanceRatio",
  name: "Rod bearing clearance over journal",
  symbol: "psi_r",
  unit: "1",
  decimals: 5,
  system: "bearings",
  meaning:
    "Oil clearance as a share of the journal’s diameter; about one thousandth is the common rule of thumb, in millimetres as in inches.",
  inputs: { C_r: "rodBearingClearance", D_p: "crankshaft.crankpinDiameter" },
  formula: "C_r / D_p",
  compute: ({ C_r, D_p }) => C_r / D_p,
  shape: "monotone",
  hot: { quantity: "rodBearingClearanceRatioHot" },
  valid: "cold",
  sources: [{ id: "definition" }],
  examples: [{ given: { C_r: "0.056 mm", D_p: "48 mm" }, expect: "0.00117" }],
});
