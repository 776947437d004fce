import { quantity } from "../../Quantity.ts";

export const mainBearingClearanceRatio = quantity({
  id: "mainBearingClearanceRatio",
  name: "Main bearing clearance over journal",
  symbol: "psi_m",
  unit: "1",
  decimals: 5,
  system: "bearings",
  meaning:
    "Oil clearance as a share of the journal’s diameter; about one thousandth is the common rule of thumb, in millimetres as in inches.",
  inputs: { C_m: "mainBearingClearance", D_m: "crankshaft.mainJournalDiameter" },
  formula: "C_m / D_m",
  compute: ({ C_m, D_m }) => C_m / D_m,
  shape: "monotone",
  hot: { quantity: "mainBearingClearanceRatioHot" },
  valid: "cold",
  sources: [{ id: "definition" }],
  examples: [{ given: { C_m: "0.062 mm", D_m: "57 mm" }, expect: "0.00109" }],
});
