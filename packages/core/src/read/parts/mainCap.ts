import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** The main bearing caps. */
export const mainCap = part(
  { key: "mainCap", id: "main-cap", label: "Main caps", help: "The main bearing caps." },
  {
    kind: choice({
      label: "Cap kind",
      help: "Where the caps come from.",
      options: {
        original: "as cast or forged by the engine's maker",
        upgraded: "machined steel or stronger replacement caps",
      },
    }),
    split: choice({
      label: "What holds the main bearings",
      help: "Where the main bearings part, and so which loads pull at their fasteners.",
      options: {
        caps: "caps, drawn off away from the cylinders",
        case: "two halves of the crankcase that meet between opposed cylinders",
      },
      assumed: {
        byChoice: "block.layout",
        values: {
          single: {
            value: "caps",
            because: "cylinders in a row stand on a block with caps (common practice)",
          },
          inline: {
            value: "caps",
            because: "cylinders in a row stand on a block with caps (common practice)",
          },
          vee: { value: "caps", because: "the block of a V has caps below (common practice)" },
          flat: {
            value: "case",
            because: "opposed cylinders mostly stand on two halves of a crankcase (common practice)",
          },
        },
      },
    }),
    boltsPerCap: count({ label: "Fasteners per cap", symbol: "n_c", help: "Counted.", least: 2, most: 6 }),
    registerInterference: dimension({
      label: "Register interference",
      symbol: "delta_r",
      unit: "mm",
      per: "main",
      measureBy: "trial-assembly",
      range: ["-0.5 mm", "0.5 mm"],
      tolerance: "0.006",
      help: "How much wider the cap is than its register in the block.",
    }),
    registerWidth: dimension({
      label: "Register width",
      symbol: "w_c",
      unit: "mm",
      range: ["30 mm", "300 mm"],
      tolerance: "0.5",
      help: "Width of the cap between its registers in the block.",
    }),
    modulus: dimension({
      label: "Elastic modulus of the cap",
      symbol: "E_cap",
      unit: "GPa",
      range: ["60 GPa", "220 GPa"],
      tolerance: "5 %",
      help: "Young's modulus of the cap’s metal.",
      assumed: {
        byChoice: "mainCap.kind",
        values: {
          original: {
            value: "150 GPa ± 30",
            because: "original caps are of grey or ductile iron (from memory)",
          },
          upgraded: {
            value: "190 GPa ± 25",
            because: "replacement caps are of steel or ductile iron (from memory)",
          },
        },
      },
    }),
    expansion: dimension({
      label: "Thermal expansion of the cap",
      symbol: "alpha_cap",
      unit: "um/(m K)",
      range: ["3 um/(m K)", "30 um/(m K)"],
      tolerance: "5 %",
      help: "Growth of each metre of the cap’s metal for each kelvin.",
      assumed: {
        byChoice: "mainCap.kind",
        values: {
          original: {
            value: "11.5 um/(m K) ± 1",
            because: "original caps are of grey or ductile iron (from memory)",
          },
          upgraded: {
            value: "11.8 um/(m K) ± 0.8",
            because: "replacement caps are of steel or ductile iron (from memory)",
          },
        },
      },
    }),
    dowelCount: count({
      label: "Dowels per cap",
      symbol: "n_dw",
      help: "Dowels that place one cap, counted; ring dowels round its fasteners count as well.",
      least: 1,
      most: 6,
    }),
    dowelDiameter: dimension({
      label: "Dowel diameter",
      symbol: "D_dw",
      unit: "mm",
      range: ["3 mm", "40 mm"],
      tolerance: "0.01",
      help: "Outer diameter of one dowel.",
    }),
    dowelBore: dimension({
      label: "Bore of the dowels",
      symbol: "d_dw",
      unit: "mm",
      range: ["0 mm", "36 mm"],
      tolerance: "0.1",
      help: "Inner diameter of a ring dowel; 0 for a solid one.",
    }),
    dowelShear: dimension({
      label: "Allowable shear of the dowels",
      symbol: "tau_dw",
      unit: "MPa",
      range: ["50 MPa", "600 MPa"],
      tolerance: "10 %",
      help: "Shear stress that the dowels may carry.",
      assumed: {
        value: "200 MPa ± 40",
        because: "plain steel dowels carry about 160 to 240 MPa in shear (from memory)",
      },
    }),
    jointFriction: dimension({
      label: "Friction of the cap joint",
      symbol: "mu_c",
      unit: "1",
      range: ["0.05", "0.5"],
      tolerance: "0.02",
      help: "Friction between cap and block.",
      assumed: { value: "0.15 ± 0.03", because: "clean machined joints slip at 0.12 to 0.18 (from memory)" },
    }),
  },
);
