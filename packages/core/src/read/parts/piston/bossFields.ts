import { dimension } from "../../fields.ts";

/** Pin bore, bosses and retainers. */
export const bossFields = {
  pinBore: dimension({
    label: "Pin bore",
    symbol: "d_b",
    unit: "mm",
    per: "cylinder",
    measureBy: "trial-assembly",
    range: ["8 mm", "80 mm"],
    tolerance: "0.003",
    help: "Bore for the piston pin in the bosses.",
  }),
  pinOffset: dimension({
    label: "Pin offset",
    symbol: "delta",
    unit: "mm",
    range: ["-5 mm", "5 mm"],
    tolerance: "0.05",
    signs: { "towards thrust side": 1, "away from thrust side": -1 },
    help: "Distance of the pin axis from the piston's middle, across the crankshaft.",
    assumed: {
      value: "0 mm ± 1.5",
      because: "pins stand up to 1.5 mm off the piston's middle, either way (common practice)",
    },
  }),
  bossSpacing: dimension({
    label: "Space between the bosses",
    symbol: "s_b",
    unit: "mm",
    range: ["8 mm", "120 mm"],
    tolerance: "0.1",
    help: "Inside distance between the two pin bosses.",
  }),
  bossLength: dimension({
    label: "Boss length",
    symbol: "l_b",
    unit: "mm",
    range: ["4 mm", "80 mm"],
    tolerance: "0.2",
    help: "Loaded length of one pin boss along the pin.",
  }),
  retainerSpan: dimension({
    label: "Retainer groove span",
    symbol: "L_rg",
    unit: "mm",
    per: "cylinder",
    range: ["20 mm", "240 mm"],
    tolerance: "0.05",
    help: "Between the outer walls of the two retainer grooves.",
  }),
  retainerThickness: dimension({
    label: "Retainer thickness",
    symbol: "t_r",
    unit: "mm",
    range: ["0.3 mm", "5 mm"],
    tolerance: "0.03",
    help: "Axial thickness of one pin retainer; where one end carries several, all of that end together.",
  }),
};
