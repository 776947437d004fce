import { dimension } from "../../fields.ts";

/** Main bearing housings and the room about the crankshaft. */
export const housingFields = {
  mainHousingBore: dimension({
    label: "Main bearing housing bore",
    symbol: "D_Hm",
    unit: "mm",
    per: "main",
    measureBy: "trial-assembly",
    form: { taper: "block.mainHousingTaper", outOfRound: "block.mainHousingOutOfRound" },
    range: ["20 mm", "200 mm"],
    tolerance: "0.01",
    help: "Bore of the main bearing housing with the cap tightened as in the final build.",
  }),
  mainHousingTaper: dimension({
    label: "Taper of the main bearing housings",
    symbol: "k_Hm",
    unit: "mm",
    per: "main",
    measureBy: "trial-assembly",
    range: ["0 mm", "0.5 mm"],
    tolerance: "0.002",
    help: "Largest difference of diameter between the two ends of one main bearing housing, in the same direction, caps tightened, without shells; of all housings the worst.",
  }),
  mainHousingOutOfRound: dimension({
    label: "Out-of-round of the main bearing housings",
    symbol: "o_Hm",
    unit: "mm",
    per: "main",
    measureBy: "trial-assembly",
    range: ["0 mm", "0.5 mm"],
    tolerance: "0.002",
    help: "Largest less smallest diameter at one place of a main bearing housing, measured beside the joint, not on it, caps tightened, without shells; of all housings the worst.",
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
