import { crankcaseVolumeSwing as swingOf } from "@trialfit/mechanics";
import { phasesOf } from "../../engineVolumes.ts";
import { quantity } from "../../Quantity.ts";

export const crankcaseVolumeSwing = quantity({
  id: "crankcaseVolumeSwing",
  name: "Breathing of the crankcase",
  symbol: "Delta_V_cc",
  unit: "cm3",
  decimals: 0,
  system: "lubrication",
  meaning:
    "How much the space under the pistons shrinks and grows in every turn. Singles and flat twins pump all their displacement through breather and seals; engines whose pistons move against each other hardly any.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", B: "block.bore" },
  tables: { throws: "crankshaft.throws" },
  method:
    "Bore area times the sum of the pistons’ travels, each at its crankpin’s angle in its bank: the greatest less the least over a turn.",
  compute: ({ r, l, e, B }, _words, { throws }) =>
    swingOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      cylinders: phasesOf(throws),
    }),
  shape: "guarded",
  valid: "one open crankcase; where walls part it, each space breathes by itself and more",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "0 mm", B: "86.5 mm", throws: "0 deg, 0 deg, 0 mm, 0 deg" },
      expect: "552 cm3",
    },
    {
      given: {
        r: "34 mm",
        l: "130 mm",
        e: "0 mm",
        B: "68 mm",
        throws: "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 180 deg, 40 mm, 360 deg",
      },
      expect: "494 cm3",
    },
  ],
  display: true,
});
