import { dimension } from "../../fields.ts";

/** Main bearing housings and the room about the crankshaft. */
export const housingFields = {
  mainHousingBore: dimension({
    label: "Main bearing housing bore",
    symbol: "D_Hm",
    unit: "mm",
    per: "main",
    measureBy: "trial-assembly",
    range: ["20 mm", "200 mm"],
    tolerance: "0.01",
    help: "Bore of the main bearing housing with the cap tightened as in the final build.",
  }),
  mainHousingOuterDiameter: dimension({
    label: "Main housing outer diameter",
    symbol: "D_Ho",
    unit: "mm",
    range: ["25 mm", "400 mm"],
    tolerance: "5",
    help: "Outer diameter of a ring as stiff as the main bearing housing: twice the distance from its centre to the outside of the cap at its thinnest place.",
  }),
  crankcaseRadius: dimension({
    label: "Free radius in the crankcase",
    symbol: "R_cc",
    unit: "mm",
    range: ["30 mm", "400 mm"],
    tolerance: "0.3",
    help: "Radius round the crankshaft axis that is free of metal at the counterweights.",
  }),
};
