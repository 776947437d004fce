import { dimension } from "../../fields.ts";

/** Small end and masses. */
export const massFields = {
  smallEndBore: dimension({
    label: "Small-end bore",
    symbol: "d_se",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["8 mm", "80 mm"],
    tolerance: "0.004",
    help: "Finished bore of the small-end bush.",
  }),
  smallEndWidth: dimension({
    label: "Small-end width",
    symbol: "b_se",
    unit: "mm",
    per: "cylinder",
    range: ["8 mm", "90 mm"],
    tolerance: "0.05",
    help: "Width of the small end along the piston pin.",
  }),
  bigEndMass: dimension({
    label: "Big-end mass",
    symbol: "m_b",
    unit: "g",
    per: "cylinder",
    measureBy: "machine",
    range: ["20 g", "5000 g"],
    tolerance: "1",
    help: "Rotating share: the big end weighed with the rod level and the small end supported.",
  }),
  smallEndMass: dimension({
    label: "Small-end mass",
    symbol: "m_s",
    unit: "g",
    per: "cylinder",
    measureBy: "machine",
    range: ["10 g", "3000 g"],
    tolerance: "1",
    help: "Reciprocating share: the small end weighed with the rod level and the big end supported.",
  }),
  capMass: dimension({
    label: "Cap mass",
    symbol: "m_cap",
    unit: "g",
    range: ["10 g", "3000 g"],
    tolerance: "2",
    help: "Mass below the cap joint, bolts included.",
  }),
};
